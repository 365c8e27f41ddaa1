/**
 * Colors of the drawings: the set of Okabe & Ito, *Color Universal Design* (2002, revised 2008), and tints of its members
 * with white. See the shape grammar in DEVELOPERS.md for what each is used for.
 */
export const INK = "#1a1a1a";
/** Words of less weight; 8.6:1 on white. */
export const SECOND_INK = "#4d4d4d";
/** At least 3:1 on every ground that it crosses, the darkest cement too. */
export const LEADER = "#696969";
export const WALL = "#696969";
/** Dotted lines of a chart, at its round values. */
export const RULING = "#696969";
export const PAPER = "#ffffff";
export const SKY_BLUE = "#56b4e9";
export const BLUE = "#0072b2";
export const VERMILLION = "#d55e00";
export const ORANGE = "#e69f00";
export const BLUISH_GREEN = "#009e73";
/** A color mixed with white; `share` of one is the color itself. */
export const tint = (color: string, share: number): string => {
	const channel = (at: number) => Number.parseInt(color.slice(at, at + 2), 16);
	const mixed = [1, 3, 5].map((at) => Math.round(255 - share * (255 - channel(at))));
	return `#${mixed.map((value) => value.toString(16).padStart(2, "0")).join("")}`;
};

export const WATER_TINT = tint(SKY_BLUE, 0.28);
export const TARGET_TINT = tint(ORANGE, 0.22);
/** Warm light grey: cement as planned, and a step darker as built. */
export const CEMENT_PLANNED = "#e4e0d8";
export const CEMENT_BUILT = "#cbc5b9";
export const CEMENT_GRAIN = "#5f5a50";
/** Rock that nothing else is said of. */
export const GROUND = "#f6f4ef";
export const ROCK_LINE = "#3d3d3d";

/** Relative luminance and contrast as WCAG 2.1 defines them. */
const luminance = (color: string): number => {
	const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
		const channel = Number.parseInt(color.slice(at, at + 2), 16) / 255;
		return channel <= 0.03928 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
	});
	return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};

/** Contrast ratio of two colors, 1 to 21. */
export const contrast = (a: string, b: string): number => {
	const [dark = 0, light = 0] = [luminance(a), luminance(b)].sort((x, y) => x - y);
	return (light + 0.05) / (dark + 0.05);
};
