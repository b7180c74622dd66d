// What the body says: checked measurements in millimetres. Readings become a body in reading.ts.

/** In the order they are taken. The one list of them. */
export const measurementOrder = ['waist', 'hip', 'waistToHip', 'length'] as const;
export type Measurement = (typeof measurementOrder)[number];
export const isMeasurement = (text: string | undefined): text is Measurement => measurementOrder.some((one) => one === text);

/** A checked body. `waist` and `hip` are horizontal girths; `waistToHip` is measured down the side. */
export interface Body {
	readonly waist: number;
	readonly hip?: number;
	readonly waistToHip?: number;
}
