import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Resvg } from "@resvg/resvg-js";
import { PNG } from "pngjs";
import { inChromium } from "./chromium.mjs";
import { isThere, run, versionOf } from "./run.mjs";

/** Width that every program draws at, and the side of the squares whose mean lightness is compared. */
const WIDTH = 1000;
const SQUARE = 20;
/** Most that a square may differ, of 255. Letters are hinted and smoothed differently; a mark that is missing or elsewhere differs by more. */
const MOST = 64;

const lightness = ({ width, height, data }) => {
	const across = Math.ceil(width / SQUARE);
	const down = Math.ceil(height / SQUARE);
	const sums = new Float64Array(across * down);
	const counts = new Float64Array(across * down);
	for (let y = 0; y < height; y += 1) {
		for (let x = 0; x < width; x += 1) {
			const at = 4 * (y * width + x);
			const shown = data[at + 3] / 255;
			const grey = 0.299 * data[at] + 0.587 * data[at + 1] + 0.114 * data[at + 2];
			const square = Math.floor(y / SQUARE) * across + Math.floor(x / SQUARE);
			sums[square] += shown * grey + (1 - shown) * 255;
			counts[square] += 1;
		}
	}
	return { across, down, mean: sums.map((sum, index) => sum / counts[index]) };
};

/** Greatest difference of two pictures over their squares, and where it is. */
export const greatestDifference = (one, other) => {
	const a = lightness(one);
	const b = lightness(other);
	const across = Math.min(a.across, b.across);
	let most = { by: 0, at: "" };
	for (let row = 0; row < Math.min(a.down, b.down); row += 1) {
		for (let column = 0; column < across; column += 1) {
			const by = Math.abs(a.mean[row * a.across + column] - b.mean[row * b.across + column]);
			if (by > most.by) most = { by, at: `${column * SQUARE},${row * SQUARE}` };
		}
	}
	return most;
};

const drawnByResvg = (svg) =>
	PNG.sync.read(
		Buffer.from(
			new Resvg(svg, {
				fitTo: { mode: "width", value: WIDTH },
				background: "white",
				font: { fontDirs: [FONTS], loadSystemFonts: false, defaultFontFamily: "Source Sans 3" },
			})
				.render()
				.asPng(),
		),
	);

const FONTS = join(process.cwd(), "node_modules/@expo-google-fonts/source-sans-3");

/** librsvg does not read the face that a drawing carries; it is given the same face as the others. */
const withFonts = (folder) => {
	const file = join(folder, "fonts.conf");
	writeFileSync(
		file,
		`<?xml version="1.0"?><fontconfig><dir>${FONTS}</dir><cachedir>${folder}</cachedir></fontconfig>`,
	);
	return { ...process.env, FONTCONFIG_FILE: file };
};

const drawnByLibrsvg = (file, folder, env) => {
	const out = join(folder, "drawing.png");
	const done = run("rsvg-convert", ["-w", String(WIDTH), "-b", "white", "-o", out, file], { env });
	return done.status === 0 ? PNG.sync.read(readFileSync(out)) : undefined;
};

const drawnByChromium = async (page, file) => {
	await page.setContent(
		`<body style="margin:0;background:white"><img id="d" style="width:${WIDTH}px;display:block" src="${dataUrl(file)}"></body>`,
	);
	await page.locator("#d").evaluate((image) => image.decode());
	return PNG.sync.read(await page.locator("#d").screenshot());
};

const dataUrl = (file) => `data:image/svg+xml;base64,${readFileSync(file).toString("base64")}`;

const drawingsOf = (outputs) => outputs.flatMap(({ files }) => files.filter((file) => file.endsWith(".svg")));

const alike = {
	name: "Chromium, librsvg, resvg",
	reads: `the drawings, drawn alike: squares of ${SQUARE} px differ by at most ${MOST} of 255`,
	of: (outputs) =>
		inChromium(async (browser, version) => {
			if (!isThere("rsvg-convert")) return { absent: "no rsvg-convert on this machine" };
			const folder = mkdtempSync(join(tmpdir(), "casebound-judge-"));
			const env = withFonts(folder);
			const page = await browser.newPage({ viewport: { width: WIDTH, height: 1400 } });
			const drawings = drawingsOf(outputs);
			const found = [];
			let most = 0;
			for (const file of drawings) {
				const own = drawnByResvg(readFileSync(file, "utf8"));
				const others = {
					Chromium: await drawnByChromium(page, file),
					librsvg: drawnByLibrsvg(file, folder, env),
				};
				for (const [name, other] of Object.entries(others)) {
					if (other === undefined) {
						found.push({ where: file, what: `${name} does not draw it` });
						continue;
					}
					const { by, at } = greatestDifference(own, other);
					most = Math.max(most, by);
					if (by > MOST)
						found.push({ where: file, what: `${name} and resvg differ by ${Math.round(by)} at ${at}` });
				}
			}
			return {
				version: `${version.split(",")[0]}; ${versionOf("rsvg-convert")}; as shipped`,
				read: `${drawings.length} SVG`,
				checks: drawings.length * 2,
				found,
				note: `greatest difference ${Math.round(most)}`,
			};
		}),
};

export const svgJudges = [alike];
