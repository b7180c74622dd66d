// What the body says: checked measurements in millimetres. Readings become a body in reading.ts.

/** In the order they are taken. The one list of them. */
export const measurementOrder = ['waist', 'hip', 'waistToHip', 'length'] as const;
export type Measurement = (typeof measurementOrder)[number];
export const isMeasurement = (text: string | undefined): text is Measurement => measurementOrder.some((one) => one === text);

/** What a body may say. The floor is read only where a skirt comes near it, so it isn't among those that are always taken. */
export type BodyMeasurement = Exclude<Measurement, 'length'> | 'waistToFloor';
export const bodyMeasurements: readonly BodyMeasurement[] = ['waist', 'hip', 'waistToHip', 'waistToFloor'];

/** A checked body. `waist` and `hip` are horizontal girths; `waistToHip` is measured down the side, `waistToFloor` in the shoes that are worn. */
export interface Body {
	readonly waist: number;
	readonly hip?: number;
	readonly waistToHip?: number;
	readonly waistToFloor?: number;
	/** Where one was read more than once: every reading, the oldest first. */
	readonly readings?: Readonly<Partial<Record<BodyMeasurement, readonly number[]>>>;
}
