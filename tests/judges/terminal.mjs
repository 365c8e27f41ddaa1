import { existsSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { isThere, root, run, versionOf } from "./run.mjs";

const WIDTHS = [60, 80, 120, 200];
const starter = "seeds/starters/horizontal.yaml";

/** What a person types, and the exit code that the documents promise. */
const TYPED = [
	["--help", 0],
	["--version", 0],
	["bind --help", 0],
	["list starters", 0],
	["list papers", 0],
	[`check ${starter}`, 0],
	["explain surface-shoe-depth", 0],
	["frobnicate", 64],
	["bind", 64],
	["check no-such-file.yaml", 66],
];

const tmux = (...args) => run("tmux", ["-L", "casebound-judge", ...args]);

const wait = (milliseconds) => new Promise((done) => setTimeout(done, milliseconds));

/** Types one line into a terminal of the given width; gives the screen and the exit code. */
const typed = async (session, width, words, environment) => {
	const folder = mkdtempSync(join(tmpdir(), "casebound-terminal-"));
	const code = join(folder, "code");
	const script = join(folder, "typed.sh");
	writeFileSync(
		script,
		`cd ${root}\n${environment} node dist/main.js ${words}\necho $? > ${code}\nsleep 60\n`,
	);
	const started = tmux("new-session", "-d", "-s", session, "-x", String(width), "-y", "400", "bash", script);
	if (started.status !== 0) throw new Error(`tmux did not start: ${started.stderr}`);
	for (let tries = 0; tries < 2400; tries += 1) {
		await wait(50);
		try {
			if (readFileSync(code, "utf8").trim() !== "") break;
		} catch {}
	}
	const screen = tmux("capture-pane", "-p", "-e", "-J", "-t", session).stdout;
	tmux("kill-session", "-t", session);
	return { screen, code: existsSync(code) ? Number(readFileSync(code, "utf8")) : "none within two minutes" };
};

const escapes = new RegExp(`${String.fromCharCode(27)}\\[[0-9;]*m`, "gu");
const codePoints = (line) => [...line.replace(escapes, "")].length;

const terminal = {
	name: "tmux",
	reads: `a terminal ${WIDTHS.join(", ")} columns wide: exit codes, lines within the width, NO_COLOR`,
	of: async () => {
		if (!isThere("tmux")) return { absent: "no tmux on this machine" };
		const found = [];
		let checks = 0;
		// The server ends with its last session; this one keeps it until all was typed.
		tmux("new-session", "-d", "-s", "keeper", "cat");
		for (const width of WIDTHS) {
			for (const [index, [words, expected]] of TYPED.entries()) {
				const { screen, code } = await typed(`w${width}-${index}`, width, words, "NO_COLOR=1");
				const where = `${words}, ${width} columns`;
				checks += 3;
				if (code !== expected) found.push({ where, what: `exit code ${code}, ${expected} expected` });
				if (/\[[0-9;]*m/.test(screen.replaceAll("[0m", "").replaceAll("[39m", ""))) {
					found.push({ where, what: "color although NO_COLOR is set" });
				}
				const long = screen.split("\n").find((line) => codePoints(line.trimEnd()) > width);
				if (long !== undefined)
					found.push({ where, what: `a line runs over the edge: ${long.slice(0, 100)}` });
			}
		}
		tmux("kill-server");
		return {
			version: versionOf("tmux", "-V"),
			read: `${TYPED.length} commands, ${WIDTHS.length} widths`,
			checks,
			found,
		};
	},
};

export const terminalJudges = [terminal];
