// How a command ends: what keeps it from starting is told in its own sentence; our own bugs keep their trace.
import { CannotStart } from '../lib/server/cannot-start.ts';

export async function finish(work: Promise<void>): Promise<void> {
	try {
		await work;
	} catch (problem) {
		process.stderr.write(`${problem instanceof CannotStart ? `\n${problem.message}\n\n` : (problem as Error).stack}\n`);
		process.exit(1);
	}
}
