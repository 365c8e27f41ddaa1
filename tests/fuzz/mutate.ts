import fc from "fast-check";

/** The numbers that say where a change is made and to what. */
interface Spot {
	readonly where: number;
	readonly what: number;
	readonly much: number;
}

type Work = (lines: string[], spot: Spot) => string[];

const pick = <T>(list: readonly T[], n: number): T | undefined => list[n % Math.max(1, list.length)];

/** What upsets readers: of YAML, of numbers, of units, of terminals and of JavaScript. */
const NASTY = [
	"\u0000",
	"\t",
	"\r",
	"\n",
	"\ufeff",
	"\u00a0",
	"\u2009",
	"\u200b",
	"\u2028",
	"\u202e",
	"\u2212",
	"½",
	"⅝",
	"”",
	"é",
	"💧",
	"\ud800",
	"#",
	" #",
	":",
	": ",
	",",
	", ",
	";",
	"{",
	"}",
	"[",
	"]",
	"&a ",
	"*a",
	"!x ",
	"|",
	">",
	"%",
	"@",
	"`",
	"'",
	'"',
	"\\",
	"- ",
	"? ",
	"---\n",
	"...\n",
	"<<: ",
	"~",
	"null",
	"true",
	"NaN",
	".inf",
	"-0",
	"0",
	"-1",
	"1e999",
	"1e308",
	"1e-320",
	"9007199254740993",
	"0x1F",
	"1_000",
	"1,250",
	"1 250",
	"8,5",
	"95/8",
	"9 5/8",
	"1/0",
	"surface",
	"to top cluster",
	"__proto__",
	"constructor",
	"toString",
	"x".repeat(3000),
] as const;

const UNITS = [
	"ft",
	"m",
	"in",
	"mm",
	"psi",
	"kPa",
	"MPa",
	"mPa",
	"ppg",
	"SG",
	"kg/m3",
	"lb/gal",
	"lb/ft",
	"kg/m",
	"psi/ft",
	"bbl",
	"m3",
	"gal",
	"bbl/min",
	"min",
	"hr",
	"day",
	"%",
	"degF",
	"degC",
	"deg",
	"deg/100 ft",
	"ft TVD",
	"ft MD",
	"ft below ground",
	"ft TVDSS",
	"mD",
	"md",
	"ft3/sk",
	"gal/sk",
	"acre",
	"mi",
	"lbf",
	"cP",
] as const;

const NUMBER = /-?\d+(?:\.\d+)?/g;
const UNIT = /(?<=\d ?)(?:ft TVD|ft below ground|[a-zA-Z%][a-zA-Z0-9/%^³]*)/g;
const VALUE = /^(\s*(?:- )?[\w-]+: )(\S.*)$/;
const KEY = /([{,\s-]|^)([a-z][a-z_]+)(?=: )/g;

const onLine =
	(edit: (line: string, spot: Spot) => string): Work =>
	(lines, change) => {
		const at = change.where % Math.max(1, lines.length);
		return lines.map((line, i) => (i === at ? edit(line, change) : line));
	};

/** Replaces one of the places of a pattern in a line, chosen by `what`. */
const oneOf = (line: string, pattern: RegExp, what: number, by: (found: string) => string): string => {
	const places = [...line.matchAll(pattern)];
	const place = pick(places, what);
	if (place === undefined) return line;
	return line.slice(0, place.index) + by(place[0]) + line.slice(place.index + place[0].length);
};

const numberChanged = (written: string, much: number): string => {
	const value = Number(written);
	const changes = [
		String(value * 10),
		String(value / 10),
		String(value * 1000),
		String(-value),
		"0",
		String(value + 1),
		String(value * 1.01),
		String(value * 0.3048),
		written.replace(".", ","),
		written.replace(/(\d)(\d{3})\b/, "$1,$2"),
		`${written}${written}`,
		written.slice(0, -1),
		"1e30",
		"1e-30",
	];
	return pick(changes, much) ?? written;
};

const keyChanged = (key: string, { much, where }: Spot, others: readonly string[]): string => {
	const at = where % key.length;
	const changes = [
		key.slice(0, at) + key.slice(at + 1),
		key.slice(0, at) + key.charAt(at) + key.slice(at),
		key.slice(0, at) + key.charAt(at + 1) + key.charAt(at) + key.slice(at + 2),
		key.toUpperCase(),
		key.replaceAll("_", "-"),
		pick(others, where * 7 + much) ?? key,
		"",
		"x",
	];
	return pick(changes, much) ?? key;
};

const indentOf = (line: string): number => line.length - line.trimStart().length;

/** The lines of the block that begins at a line: itself and what stands further in below it. */
const blockAt = (lines: readonly string[], at: number): readonly [start: number, end: number] => {
	const depth = indentOf(lines[at] ?? "");
	let end = at + 1;
	while (end < lines.length && (lines[end]?.trim() === "" || indentOf(lines[end] ?? "") > depth)) end += 1;
	return [at, end];
};

const WORKS = {
	"delete a line": (lines, { where }) => lines.filter((_, i) => i !== where % lines.length),
	"repeat a line": (lines, { where }) =>
		lines.flatMap((line, i) => (i === where % lines.length ? [line, line] : [line])),
	"exchange two lines": (lines, { where, what }) => {
		const [a, b] = [where % lines.length, what % lines.length];
		return lines.map((line, i) => (i === a ? (lines[b] ?? "") : i === b ? (lines[a] ?? "") : line));
	},
	"move a line in or out": onLine((line, { much }) =>
		much % 2 === 0 ? `${" ".repeat(1 + (much % 5))}${line}` : line.slice(1 + (much % 3)),
	),
	"delete a block": (lines, { where }) => {
		const [start, end] = blockAt(lines, where % lines.length);
		return [...lines.slice(0, start), ...lines.slice(end)];
	},
	"repeat a block": (lines, { where }) => {
		const [start, end] = blockAt(lines, where % lines.length);
		return [...lines.slice(0, end), ...lines.slice(start, end), ...lines.slice(end)];
	},
	"exchange two values": (lines, { where, what }) => {
		const valued = lines.flatMap((line, i) => (VALUE.test(line) ? [i] : []));
		const [a, b] = [pick(valued, where), pick(valued, what)];
		if (a === undefined || b === undefined) return lines;
		const [, keyA = "", valueA = ""] = VALUE.exec(lines[a] ?? "") ?? [];
		const [, keyB = "", valueB = ""] = VALUE.exec(lines[b] ?? "") ?? [];
		return lines.map((line, i) => (i === a ? keyA + valueB : i === b ? keyB + valueA : line));
	},
	"delete characters": onLine((line, { what, much }) => {
		const at = what % Math.max(1, line.length);
		return line.slice(0, at) + line.slice(at + 1 + (much % 4));
	}),
	"put something nasty in": onLine((line, { what, much }) => {
		const at = what % (line.length + 1);
		return line.slice(0, at) + (pick(NASTY, much) ?? "") + line.slice(at);
	}),
	"put something nasty for a value": onLine((line, { much }) =>
		line.replace(VALUE, (_, key: string) => key + (pick(NASTY, much) ?? "")),
	),
	"put something nasty for a word": onLine((line, { what, much }) =>
		oneOf(line, /[\w.%-]+/g, what, () => pick(NASTY, much) ?? ""),
	),
	"change a number": onLine((line, { what, much }) =>
		oneOf(line, NUMBER, what, (written) => numberChanged(written, much)),
	),
	"change a unit": onLine((line, { what, much }) => oneOf(line, UNIT, what, () => pick(UNITS, much) ?? "")),
	"lose a unit": onLine((line, { what }) => oneOf(line, UNIT, what, () => "")),
	"rename a key": (lines, change) => {
		const keys = lines.flatMap((line) => [...line.matchAll(KEY)].map((found) => found[2] ?? ""));
		return onLine((line, { what }) =>
			oneOf(line, KEY, what, (found) => {
				const [key = ""] = /[a-z_]+$/.exec(found) ?? [];
				return found.slice(0, found.length - key.length) + keyChanged(key, change, keys);
			}),
		)(lines, change);
	},
	"take another line's number": (lines, { where, what }) => {
		const numbers = lines.flatMap((line) => line.match(NUMBER) ?? []);
		return onLine((line) => oneOf(line, NUMBER, what, () => pick(numbers, what * 13 + where) ?? ""))(lines, {
			where,
			what,
			much: 0,
		});
	},
	"cut the rest off": (lines, { where, what }) => {
		const at = where % lines.length;
		const last = lines[at] ?? "";
		return [...lines.slice(0, at), last.slice(0, what % (last.length + 1))];
	},
} as const satisfies Record<string, Work>;

type Kind = keyof typeof WORKS;
const KINDS = Object.keys(WORKS) as Kind[];

/** One change to a text. */
export interface Change extends Spot {
	readonly kind: Kind;
}

/** The text after every change in turn. */
export const mutated = (text: string, changes: readonly Change[]): string =>
	changes
		.reduce<string[]>(
			(lines, change) => (lines.length === 0 ? lines : WORKS[change.kind](lines, change)),
			text.split("\n"),
		)
		.join("\n");

const anywhere = fc.nat({ max: 1_000_000 });

export const changes = fc.array(
	fc.record<Change>({ kind: fc.constantFrom(...KINDS), where: anywhere, what: anywhere, much: anywhere }),
	{ minLength: 1, maxLength: 4 },
);
