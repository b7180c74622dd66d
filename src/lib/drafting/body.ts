// What the body says: checked measurements in millimetres. Readings become a body in reading.ts.

export type Measurement = 'waist' | 'hip' | 'waistToHip' | 'length';

/** A checked body. `waist` and `hip` are horizontal girths; `waistToHip` is measured down the side. */
export interface Body {
	readonly waist: number;
	readonly hip?: number;
	readonly waistToHip?: number;
}
