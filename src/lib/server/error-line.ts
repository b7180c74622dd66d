// What the log keeps of an error: enough to find the place, nothing a person typed.
import { drawLetters } from './digest.ts';

export function describeError(problem: unknown): { readonly error: string; readonly where: readonly string[] } {
	if (!(problem instanceof Error)) return { error: typeof problem, where: [] };
	const { name, stack = '', message } = problem;
	const where = stack.split('\n').filter((line) => /^\s+at /.test(line)).slice(0, 8).map((line) => line.trim());
	// The database's sentences quote what was sent; its codes and names of constraints don't.
	const { code, constraint_name: constraint, table_name: table } = problem as { code?: string; constraint_name?: string; table_name?: string };
	const says = code === undefined ? `${name}: ${message}` : [name, code, table, constraint].filter(Boolean).join(' ');
	return { error: says, where };
}

/** Writes the line, and gives what the person is told: an id that she can quote. */
export function logProblem(problem: unknown, method: string, route: string | null): { readonly message: string; readonly id: string } {
	const id = drawLetters(8);
	process.stderr.write(`${JSON.stringify({ id, at: new Date().toISOString(), method, route, ...describeError(problem) })}\n`);
	return { message: 'Something went wrong here, and it was not your doing.', id };
}
