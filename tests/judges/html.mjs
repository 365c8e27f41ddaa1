import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { pathToFileURL } from "node:url";
import { inChromium } from "./chromium.mjs";
import { isThere, root, run } from "./run.mjs";

const judgesRequire = createRequire(import.meta.url);
const projectRequire = createRequire(join(root, "package.json"));

const pagesOf = (outputs) => outputs.flatMap(({ files }) => files.filter((file) => file.endsWith(".html")));

const nuChecker = {
	name: "Nu Html Checker",
	reads: "HTML, the SVG in it, and its styles",
	of: (outputs) => {
		if (!isThere("java")) return { absent: "no Java on this machine" };
		const jar = join(dirname(judgesRequire.resolve("vnu-jar/package.json")), "build/dist/vnu.jar");
		const pages = pagesOf(outputs);
		const { stdout } = run("java", [
			"-Xss4m",
			"-jar",
			jar,
			"--format",
			"json",
			"--stdout",
			"--exit-zero-always",
			...pages,
		]);
		const { version, messages } = JSON.parse(stdout);
		return {
			version: version.split(" ")[0],
			read: `${pages.length} HTML`,
			checks: pages.length,
			found: messages
				.filter(
					({ type, subType }) => type === "error" || type === "non-document-error" || subType === "warning",
				)
				.map(({ url, lastLine, message }) => ({ where: `${url}:${lastLine}`, what: message })),
		};
	},
};

const WIDTHS = [
	{ width: 390, height: 844, colorScheme: "light" },
	{ width: 1280, height: 900, colorScheme: "dark" },
];

/** What axe finds on the page as it is shown, contrast among it. */
const axeFindings = async (page) =>
	page.evaluate(async () => {
		const { violations, passes } = await globalThis.axe.run(document, { resultTypes: ["violations"] });
		return {
			passed: passes.length,
			failed: violations.flatMap(({ id, help, nodes }) =>
				nodes.map(({ target }) => `${id}: ${help} at ${target.join(" ")}`),
			),
		};
	});

const sidewaysScroll = (page) =>
	page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

/** Everything that takes the keyboard, and how much of it the Tab key comes to. */
const keyboard = async (page) => {
	const wanted = await page.evaluate(() => {
		const all = [...document.querySelectorAll("a[href], button, summary, input, [tabindex='0']")];
		const shown = all.filter((element) => element.checkVisibility({ checkVisibilityCSS: true }));
		shown.forEach((element, index) => {
			element.dataset.judged = String(index);
		});
		return shown.length;
	});
	const reached = new Set();
	for (let press = 0; press < Math.min(wanted, 200) + 1; press += 1) {
		await page.keyboard.press("Tab");
		const at = await page.evaluate(() => document.activeElement?.dataset?.judged);
		if (at !== undefined) reached.add(at);
	}
	return { wanted: Math.min(wanted, 200), reached: reached.size };
};

const judgePage = async (browser, file, { width, height, colorScheme }) => {
	const where = `${file} at ${width} px, ${colorScheme}`;
	const found = [];
	const context = await browser.newContext({ viewport: { width, height }, colorScheme });
	const page = await context.newPage();
	page.on("console", (message) => found.push({ where, what: `console: ${message.text()}` }));
	page.on("pageerror", (error) => found.push({ where, what: `script: ${error.message}` }));
	page.on("request", (request) => {
		const url = request.url();
		if (!url.startsWith("file:") && !url.startsWith("data:"))
			found.push({ where, what: `asks the network for ${url}` });
	});
	await page.goto(pathToFileURL(file).href);
	await page.evaluate(readFileSync(projectRequire.resolve("axe-core/axe.min.js"), "utf8"));
	const { passed, failed } = await axeFindings(page);
	found.push(...failed.map((what) => ({ where, what })));
	const over = await sidewaysScroll(page);
	if (over > 0) found.push({ where, what: `the page scrolls sideways by ${over} px` });
	const { wanted, reached } = await keyboard(page);
	if (reached < wanted) found.push({ where, what: `the Tab key reaches ${reached} of ${wanted}` });
	await page.emulateMedia({ media: "print" });
	const printed = await page.pdf({ format: "Letter" });
	if (printed.length < 1000) found.push({ where, what: "prints nothing" });
	await context.close();
	return { checks: passed + 3, found };
};

const chromium = {
	name: "axe in Chromium",
	reads:
		"at 390 px light and 1280 px dark: accessibility, contrast, console, network, sideways scrolling, keyboard, print",
	of: (outputs) =>
		inChromium(async (browser, version) => {
			const pages = pagesOf(outputs);
			const judged = [];
			for (const file of pages) for (const how of WIDTHS) judged.push(await judgePage(browser, file, how));
			return {
				version,
				read: `${pages.length} HTML, each twice`,
				checks: judged.reduce((sum, { checks }) => sum + checks, 0),
				found: judged.flatMap(({ found }) => found),
			};
		}),
};

export const htmlJudges = [nuChecker, chromium];
