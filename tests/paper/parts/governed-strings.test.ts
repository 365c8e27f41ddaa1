import { expect, it } from "vitest";
import { renderText } from "../../../src/render/text/render-text.ts";
import { composeOnce } from "../../run/compose-once.ts";
import { findingsOf, STARTERS } from "../../starters.ts";

it.each(STARTERS)(
	"%s: the regulator's paper says in a sentence for each string what governs it",
	(starter) => {
		const findings = findingsOf(starter);
		const { documents } = composeOnce(findings, [{ paper: "regulator", language: "en", units: "field" }]);
		const text = documents.map((document) => renderText(document.paper)).join("\n");
		for (const { id, loads } of Object.values(findings.results.casing)) {
			const governed = text.match(
				new RegExp(`The ${id} string is governed by [^.]+\\.\\d+ against \\d\\.\\d+ required, at `),
			);
			const silent = text.includes(`No load case could be evaluated for the ${id} string.`);
			expect([id, governed !== null, silent]).toEqual([id, loads.length > 0, loads.length === 0]);
		}
	},
);
