// What src/commands/lesson-texts.ts makes for the build.
declare module 'virtual:lesson-texts' {
	type Text = import('svelte').Component<Record<string, unknown>>;
	type Fetch<T> = () => Promise<{ readonly default: T }>;
	const lessons: Readonly<Record<string, Fetch<Readonly<Record<string, Fetch<Text>>>> | undefined>>;
	export default lessons;
}
