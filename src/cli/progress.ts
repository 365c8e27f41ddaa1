import { terminal } from "./terminal.ts";

/** Work that is done sooner needs no word of it [ms]. */
const FIRST_AFTER = 1000;
const EVERY = 250;

/** How far some work has come, on the last line of the terminal until it ends; nothing where nobody watches. */
export const showProgress = (text: () => string): { readonly end: () => void } => {
	if (!terminal.watched) return { end: () => undefined };
	let every: NodeJS.Timeout | undefined;
	const first = setTimeout(() => {
		terminal.status(text());
		every = setInterval(() => terminal.status(text()), EVERY);
		every.unref();
	}, FIRST_AFTER);
	first.unref();
	return {
		end: () => {
			clearTimeout(first);
			clearInterval(every);
			terminal.status("");
		},
	};
};
