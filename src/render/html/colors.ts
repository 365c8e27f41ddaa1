import { INK } from "../pdf/design.ts";

/** Colors of a page on the screen: words, headings and links, lines, what stops the work, and the ground. */
interface PageColors {
	readonly text: string;
	readonly heading: string;
	readonly rule: string;
	readonly stop: string;
	readonly ground: string;
}

export const LIGHT: PageColors = {
	text: INK.text,
	heading: INK.heading,
	rule: INK.rule,
	stop: INK.stop,
	ground: "#ffffff",
};

export const DARK: PageColors = {
	text: "#e9e7e2",
	heading: "#a8cdea",
	rule: "#9aa3ab",
	stop: "#ff9b8e",
	ground: "#15191d",
};

const properties = (colors: PageColors): string =>
	Object.entries(colors)
		.map(([name, color]) => `--${name}:${color}`)
		.join(";");

/**
 * The page's colors as properties, by what the reader's system asks for. Drawings keep their white ground, on which their
 * marks are told apart; print is always dark on white.
 */
export const COLOR_RULES = `:root{color-scheme:light;${properties(LIGHT)}}
@media screen and (prefers-color-scheme:dark){
:root{color-scheme:dark;${properties(DARK)}}
figure svg{background:${LIGHT.ground};padding:.5rem;border-radius:.25rem}
}`;
