import { describe, expect, it } from "vitest";
import { compileTemplate } from "../../../src/paper/words/compile-template.ts";

const HOSTILE = "*bold* [x](javascript:alert) <script>1</script> # head\n1. item {{well}} \uE0001\uE001";

describe("templates", () => {
	it("keeps an engineer's text as text, whatever it looks like", () => {
		const blocks = compileTemplate("Note: {{note}}.", "t")({ note: HOSTILE });
		expect(blocks).toEqual([
			{
				kind: "paragraph",
				children: [
					{ kind: "text", text: "Note: " },
					{ kind: "text", text: HOSTILE.replaceAll(/[\uE000-\uE001]/gu, "") },
					{ kind: "text", text: "." },
				],
			},
		]);
	});

	it("keeps a number a number until the renderer", () => {
		const depth = { kind: "quantity", dimension: "depth-below-ground", value: 958, key: "results.x" };
		const [block] = compileTemplate("It is {{depth}} deep.", "t")({ depth });
		expect(block).toEqual({
			kind: "paragraph",
			children: [{ kind: "text", text: "It is " }, depth, { kind: "text", text: " deep." }],
		});
	});

	it.each([
		["an unknown name", "{{missing}}"],
		["a prototype property", "{{note.constructor}}"],
		["__proto__", "{{note.__proto__}}"],
		["lookup", '{{lookup note "x"}}'],
		["log", "{{log note}}"],
		["raw HTML", "<b>{{note}}</b>\n\n<div>x</div>"],
		["an image", "![x](y.png)"],
		["a quote without a title", "> words"],
	])("throws, naming the template, for %s", (_, source) => {
		expect(() => compileTemplate(source, "place")({ note: "n" })).toThrow(/template place/u);
	});

	it("makes a callout of a titled quote, with its tone", () => {
		expect(
			compileTemplate("> **stop: Do not start** Because {{why}}.", "t")({ why: "it is not set" }),
		).toEqual([
			{
				kind: "callout",
				tone: "stop",
				title: "Do not start",
				blocks: [
					{
						kind: "paragraph",
						children: [
							{ kind: "text", text: "Because " },
							{ kind: "text", text: "it is not set" },
							{ kind: "text", text: "." },
						],
					},
				],
			},
		]);
	});

	it("does not start a list or a heading from data at the head of a line", () => {
		const [block] = compileTemplate("{{note}}", "t")({ note: "1. not a list" });
		expect(block).toMatchObject({ kind: "paragraph" });
	});
});
