// What the log keeps of an error: enough to find the place, nothing a person typed.

export function describeError(problem: unknown): { readonly error: string; readonly where: readonly string[] } {
	if (!(problem instanceof Error)) return { error: typeof problem, where: [] };
	const { name, stack = '', message } = problem;
	const where = stack.split('\n').filter((line) => /^\s+at /.test(line)).slice(0, 8).map((line) => line.trim());
	// The database's sentences quote what was sent; its codes and names of constraints don't.
	const { code, constraint_name: constraint, table_name: table } = problem as { code?: string; constraint_name?: string; table_name?: string };
	const says = code === undefined ? `${name}: ${message}` : [name, code, table, constraint].filter(Boolean).join(' ');
	return { error: says, where };
}
