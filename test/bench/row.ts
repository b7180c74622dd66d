export interface Row {
	readonly what: string;
	readonly figure: number;
	readonly unit: string;
	readonly goal: string;
	/** The baseline of the same run that the figure is a share of. */
	readonly ratioOf?: string;
}
