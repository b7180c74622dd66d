// What a class is called, when it is held and for how many, as typed in a form.
export interface TypedClass {
	readonly title: string;
	readonly firstDay: string;
	readonly lastDay: string;
	readonly seats: string;
}

export function typedClass(form: FormData): TypedClass {
	const text = (name: string): string => String(form.get(name) ?? '');
	return { title: text('title'), firstDay: text('firstDay'), lastDay: text('lastDay'), seats: text('seats') };
}

/** For checking: what isn't a count is no number there. */
export const readSeats = ({ seats }: TypedClass): number => (/^\s*\d{1,9}\s*$/.test(seats) ? Number(seats) : NaN);
