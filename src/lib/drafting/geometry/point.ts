// The plane that pieces are drawn on: x to the right, y up, angles counterclockwise from +x, millimetres and radians.

export type Point = readonly [x: number, y: number];

export const add = (a: Point, b: Point): Point => [a[0] + b[0], a[1] + b[1]];
export const subtract = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1]];
export const scale = (a: Point, by: number): Point => [a[0] * by, a[1] * by];
export const dot = (a: Point, b: Point): number => a[0] * b[0] + a[1] * b[1];
/** Positive when `b` points to the left of `a`. */
export const cross = (a: Point, b: Point): number => a[0] * b[1] - a[1] * b[0];
/** A plain root: pieces are far from sizes whose squares would overflow, and Math.hypot's care costs several times as much. */
export const distance = (a: Point, b: Point): number => Math.sqrt((a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2);
/** The point at `radius` from `centre` in the direction `angle`. */
export const polar = (centre: Point, radius: number, angle: number): Point => [
	centre[0] + radius * Math.cos(angle),
	centre[1] + radius * Math.sin(angle)
];
