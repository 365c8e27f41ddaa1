import { describe, expect, it } from "vitest";
import type { Drawing, Shape } from "../../../src/document/shapes.ts";
import { renderSvg } from "../../../src/render/svg/render-svg.ts";

const drawing = (shapes: readonly Shape[]): Drawing => ({
	id: "a drawing",
	width: 120.456,
	height: 80,
	title: 'Loads & "limits" <of> a string',
	alternative: "What it says.",
	scale: "Not to scale.",
	shapes,
});

const square: Shape = { kind: "path", d: "M1.23456 0h10v10.00049h-10Z", fill: "#0072b2" };

/** Elements opened and not closed, or closed and not opened. */
const unbalanced = (xml: string): string[] => {
	const open: string[] = [];
	for (const [, closing, name = "", selfClosing] of xml.matchAll(
		/<(\/?)([a-zA-Z]+)(?:"[^"]*"|[^>"])*?(\/?)>/g,
	)) {
		if (selfClosing === "/") continue;
		if (closing === "") open.push(name);
		else if (open.pop() !== name) return [name];
	}
	return open;
};

describe("SVG", () => {
	it("is an image with a title and a description, sized in points", () => {
		const svg = renderSvg(drawing([square]));
		expect(svg).toMatch(
			/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" width="120\.46pt" height="80pt" viewBox="0 0 120\.46 80" role="img" aria-labelledby="a-drawing-title a-drawing-desc"/,
		);
		expect(svg).toContain(
			'<title id="a-drawing-title">Loads &amp; &quot;limits&quot; &lt;of&gt; a string</title>',
		);
		expect(svg).toContain('<desc id="a-drawing-desc">What it says. Not to scale.</desc>');
		expect(unbalanced(svg)).toEqual([]);
	});

	it("lets no text become markup, and no character that XML forbids through", () => {
		const hostile = '</text><script>alert("x")</script>\u0000\u0008\ud800 ½\u{1f600}';
		const svg = renderSvg(
			drawing([{ kind: "text", x: 0, y: 9, text: hostile, size: 9, color: "#1a1a1a", key: 'a"b' }]),
			{ embedFonts: false },
		);
		expect(svg).not.toContain("<script");
		expect(svg).toContain("&lt;/text&gt;&lt;script&gt;alert(&quot;x&quot;)&lt;/script&gt; ½\u{1f600}</text>");
		expect(svg).toContain('data-key="a&quot;b"');
		expect(unbalanced(svg)).toEqual([]);
	});

	it("cuts decimals to hundredths of a point, in paths and in attributes", () => {
		const svg = renderSvg(
			drawing([
				square,
				{
					kind: "line",
					x1: 0.123456,
					y1: -0.001,
					x2: 1e-7,
					y2: 2,
					stroke: { color: "#000000", width: 0.3333, dash: [1.23456, 2] },
				},
			]),
			{ embedFonts: false },
		);
		expect(svg).toContain('d="M 1.23 0h10v 10h-10Z"');
		expect(svg).toContain(
			'<line x1="0.12" y1="0" x2="0" y2="2" stroke="#000000" stroke-width="0.33" stroke-dasharray="1.23 2"/>',
		);
		expect(svg.match(/\d\.\d{3,}/)).toBeNull();
	});

	it("states a fill for every path, since SVG would fill it black", () => {
		const svg = renderSvg(drawing([{ kind: "path", d: "M0 0h1", stroke: { color: "#000000", width: 1 } }]), {
			embedFonts: false,
		});
		expect(svg).toContain('<path d="M0 0h1" fill="none" stroke="#000000" stroke-width="1"/>');
	});

	it("defines each clip once, under a name that another drawing in the same page does not have", () => {
		const clipped: Shape = { ...square, clip: "M0 0h5v5Z" };
		const svg = renderSvg(
			drawing([
				clipped,
				clipped,
				{ kind: "group", dx: 3, dy: 0, name: "g", children: [{ ...square, clip: "M0 0h6v6Z" }] },
			]),
		);
		expect(svg.match(/<clipPath id="a-drawing-clip-\d"/g)).toEqual([
			'<clipPath id="a-drawing-clip-1"',
			'<clipPath id="a-drawing-clip-2"',
		]);
		expect(svg.match(/clip-path="url\(#a-drawing-clip-1\)"/g)).toHaveLength(2);
		expect(svg).toContain('<g transform="translate(3 0)" data-name="g">');
		expect(unbalanced(svg)).toEqual([]);
	});

	it("embeds the faces it uses, and no others", () => {
		const word = (weight?: "semibold"): Shape => ({
			kind: "text",
			x: 0,
			y: 9,
			text: "Shoe 9⅝ in",
			size: 9,
			color: "#1a1a1a",
			...(weight ? { weight } : {}),
		});
		expect(renderSvg(drawing([square]))).not.toContain("@font-face");
		expect(renderSvg(drawing([word()])).match(/@font-face/g)).toHaveLength(1);
		const both = renderSvg(drawing([word(), word("semibold")]));
		expect(both.match(/@font-face/g)).toHaveLength(2);
		expect(both).toContain('font-weight="600"');
		expect(renderSvg(drawing([word()]), { embedFonts: false })).not.toContain("@font-face");
	});

	it("gives the same bytes for the same drawing", () => {
		const shapes: Shape[] = [
			square,
			{
				kind: "text",
				x: 1,
				y: 2,
				text: "Shoe",
				size: 8,
				color: "#1a1a1a",
				rotate: -90,
				anchor: "end",
				italic: true,
			},
		];
		expect(renderSvg(drawing(shapes))).toBe(renderSvg(drawing(shapes)));
		expect(renderSvg(drawing(shapes))).toContain('transform="rotate(-90 1 2)"');
	});
});
