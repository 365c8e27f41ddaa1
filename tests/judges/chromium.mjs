import { isThere } from "./run.mjs";

const QUIET = [
	"--no-sandbox",
	"--disable-gpu",
	"--disable-quic",
	"--no-first-run",
	"--disable-background-networking",
	"--disable-component-update",
	"--disable-sync",
];

/** Runs `judge` with Debian's Chromium, or says that it is absent; the browser is closed in the end. */
export const inChromium = async (judge) => {
	const executablePath = ["/usr/bin/chromium", "/usr/bin/chromium-browser"].find((path) => isThere(path));
	if (executablePath === undefined) return { absent: "no Chromium on this machine" };
	const { chromium } = await import("playwright-core");
	const browser = await chromium.launch({ executablePath, args: QUIET });
	try {
		const version = browser.version();
		return await judge(browser, `${version}, axe ${await axeVersion()}`);
	} finally {
		await browser.close();
	}
};

const axeVersion = async () => (await import("axe-core")).default.version;
