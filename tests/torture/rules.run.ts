import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { expect, it } from "vitest";
import { readJurisdictionText } from "../../src/catalog/jurisdictions.ts";
import { hasErrors } from "../../src/diagnostics/diagnostic.ts";
import { locate } from "../../src/diagnostics/locate.ts";
import { printDiagnostics } from "../../src/diagnostics/print.ts";
import { readYaml } from "../../src/source/read-yaml.ts";
import { changes, mutated } from "../fuzz/mutate.ts";
import { Figures, forMinutes, MINUTES, SEED } from "./figures.ts";

const FOLDER = new URL("../../seeds/jurisdictions/", import.meta.url);
const FILES = readdirSync(FOLDER)
	.filter((name) => name.endsWith(".yaml"))
	.map((name) => ({ name, text: readFileSync(new URL(name, FOLDER), "utf8") }));

/** What is wrong with how a damaged rules file is answered. */
const faultsOf = (
	name: string,
	text: string,
): { readonly faults: readonly string[]; readonly refused: boolean } => {
	const started = performance.now();
	try {
		const { diagnostics } = readJurisdictionText(text, name);
		const tree = readYaml(text, name).value;
		const texts = new Map([
			[name, tree === undefined ? { text } : { text: tree.text, positions: tree.positions }],
		]);
		const said = printDiagnostics(diagnostics, texts, { color: false, width: 80 });
		const slow = performance.now() - started > 4000;
		return {
			refused: hasErrors(diagnostics),
			faults: [
				...(slow ? ["it takes four seconds"] : []),
				...(/undefined|\[object |NaN|Infinity/.test(said) && !/undefined|NaN|Infinity|\.inf/.test(text)
					? [`it says: ${said.slice(0, 300)}`]
					: []),
				...diagnostics
					.filter((each) => locate(each.at, texts).start === undefined)
					.map(({ code }) => `${code} has no line and column`),
			],
		};
	} catch (cause) {
		return { refused: true, faults: [String(cause instanceof Error ? cause.stack : cause)] };
	}
};

it("nothing that a rules file holds breaks, hangs or is told without a place", async () => {
	const figures = new Figures("damaged rules files");
	const one = fc.tuple(fc.constantFrom(...FILES), changes);
	await forMinutes(MINUTES / 8, (n) => {
		for (const [{ name, text }, made] of fc.sample(one, { seed: SEED + n, numRuns: 20 })) {
			const { faults, refused } = faultsOf(name, mutated(text, made));
			figures.tried += 1;
			figures.see(refused ? "refused" : "taken");
			figures.failed.push(...faults.map((fault) => `seed ${SEED + n}, ${name}: ${fault}`));
		}
	});
	figures.tell();
	expect(figures.failed).toEqual([]);
});
