import { readFileSync } from "node:fs";
import { parse } from "yaml";
import { readRows } from "./rows.ts";

interface Source {
	readonly publisher?: string;
	readonly authors?: string;
	readonly title: string;
}

const sources = parse(readFileSync(new URL("../../seeds/sources.yaml", import.meta.url), "utf8")) as {
	readonly sources: Readonly<Record<string, Source>>;
};

const named = (key: string): string => {
	const { publisher, authors, title } = sources.sources[key] ?? { title: key };
	const [work = title] = title.split(/[:;,] /);
	return `${publisher ?? authors ?? ""}: ${work}`.replace(/^: /, "").replaceAll("|", "\\|");
};

const counted = (keys: readonly string[]): readonly (readonly [string, number])[] => {
	const counts = new Map<string, number>();
	for (const key of keys) counts.set(key, (counts.get(key) ?? 0) + 1);
	return [...counts].sort(([a, n], [b, m]) => m - n || (a < b ? -1 : 1));
};

/** Which numbers are held against which published values: a row for each family of formulas, most compared first. */
export const publishedTable = (): string => {
	const checks = readRows("published").flatMap((row) =>
		row.checks
			.filter(({ expected }) => expected !== undefined)
			.map(({ formula }) => ({
				family: formula.split("/")[0] ?? "",
				formula,
				source: row.source,
				known: row.how_known,
			})),
	);
	const rows = counted(checks.map(({ family }) => family)).map(([family, count]) => {
		const own = checks.filter((check) => check.family === family);
		const formulas = new Set(own.map(({ formula }) => formula)).size;
		const known = counted(own.map((check) => check.known)).map(([how, n]) => `${how} ${n}`);
		const by = counted(own.map(({ source }) => source)).map(([source, n]) => `${named(source)} (${n})`);
		return `| \`${family}\` | ${formulas} | ${count} | ${known.join(", ")} | ${by.join("; ")} |`;
	});
	return [
		"| formulas of | how many | values | how known | published by |",
		"|---|---:|---:|---|---|",
		...rows,
	].join("\n");
};
