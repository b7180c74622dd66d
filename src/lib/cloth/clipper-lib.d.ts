// What is used of clipper-lib, which comes without types.
declare module 'clipper-lib' {
	interface IntPoint {
		X: number;
		Y: number;
	}
	class Clipper {
		AddPaths(paths: readonly (readonly IntPoint[])[], kind: number, closed: boolean): boolean;
		Execute(operation: number, solution: IntPoint[][], subjectFill: number, clipFill: number): boolean;
	}
	const library: {
		readonly Clipper: typeof Clipper;
		readonly ClipType: { readonly ctUnion: number };
		readonly PolyType: { readonly ptSubject: number };
		readonly PolyFillType: { readonly pftPositive: number };
	};
	export default library;
}
