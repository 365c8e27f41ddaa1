import { describe, expect, it } from "vitest";
import { contrast } from "../../../src/drawing/palette.ts";
import { sequencePage } from "../../../src/pipeline.ts";
import { COLOR_RULES, DARK, LIGHT } from "../../../src/render/html/colors.ts";
import { renderHtml } from "../../../src/render/html/render-html.ts";
import { documentOf, EDITIONS } from "../../run/editions.ts";
import { findingsOf } from "../../starters.ts";

describe.each([
	["light", LIGHT],
	["dark", DARK],
] as const)("a %s page", (_, { ground, text, heading, stop, rule }) => {
	it("has words and links at 4.5 to 1, lines at 3 to 1 (WCAG 2.1, 1.4.3 and 1.4.11)", () => {
		for (const color of [text, heading, stop])
			expect(contrast(color, ground), color).toBeGreaterThanOrEqual(4.5);
		expect(contrast(rule, ground)).toBeGreaterThanOrEqual(3);
	});
});

it("goes dark on a screen alone, with every color of the page a property and drawings on white", async () => {
	expect(COLOR_RULES).toContain("@media screen and (prefers-color-scheme:dark)");
	expect(COLOR_RULES).toContain(`figure svg{background:${LIGHT.ground}`);
	const [edition] = EDITIONS;
	if (edition === undefined) throw new Error("no edition");
	const { text } = await sequencePage(findingsOf("vertical-metric"), "field", "en");
	for (const html of [renderHtml(documentOf(edition)), text]) {
		const style = /<style>([\s\S]*?)<\/style>/u.exec(html)?.[1] ?? "";
		expect(style).toContain(COLOR_RULES);
		const rest = style.replace(COLOR_RULES, "").replaceAll(/@font-face\{[^}]*\}/gu, "");
		expect(rest).not.toMatch(/#[0-9a-f]{3,8}\b/iu);
	}
});
