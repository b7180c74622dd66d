/** Why the app can't start, in a sentence for whoever starts it. Commands print it as it is, with no trace. */
export class CannotStart extends Error {
	override readonly name = 'CannotStart';
}
