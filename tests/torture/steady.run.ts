import { spawn, spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";
import { Figures, forMinutes, MINUTES } from "./figures.ts";

const MAIN = fileURLToPath(new URL("../../dist/main.js", import.meta.url));
const STARTERS = ["horizontal", "horizontal-as-built", "vertical-metric"].map((name) =>
	fileURLToPath(new URL(`../../seeds/starters/${name}.yaml`, import.meta.url)),
);

/** Settings of a machine that a paper must not depend on. */
const PLACES = [
	{ TZ: "UTC", LC_ALL: "C" },
	{ TZ: "Pacific/Kiritimati", LC_ALL: "es_MX.UTF-8" },
	{ TZ: "America/Chicago", LC_ALL: "en_US.UTF-8" },
	{ TZ: "Asia/Kathmandu", LC_ALL: "tr_TR.UTF-8", LANG: "tr_TR.UTF-8" },
	{ TZ: "America/St_Johns", LC_ALL: "de_DE.UTF-8" },
];

const digestOf = (folder: string): string => {
	const hash = createHash("sha256");
	for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true }).sort((a, b) =>
		join(a.parentPath, a.name) < join(b.parentPath, b.name) ? -1 : 1,
	))
		if (entry.isFile()) hash.update(entry.name).update(readFileSync(join(entry.parentPath, entry.name)));
	return hash.digest("hex");
};

it("the same bytes in every time zone, language of the machine, number of threads", async () => {
	const figures = new Figures("bytes under other settings of the machine");
	const first = new Map<string, string>();
	await forMinutes(MINUTES / 16, (n) => {
		const starter = STARTERS[n % STARTERS.length] ?? "";
		const place = PLACES[Math.floor(n / STARTERS.length) % PLACES.length] ?? {};
		const folder = mkdtempSync(join(tmpdir(), "casebound-steady-"));
		const args = [MAIN, "bind", starter, "--for", "landowner,crew", "--with", "html,csv,json,calendar"];
		const threads = ["--threads", String(1 + (n % 2)), "--out", folder];
		const { status, stderr } = spawnSync(process.execPath, [...args, ...threads], {
			encoding: "utf8",
			env: { PATH: process.env["PATH"], ...place },
		});
		const digest = digestOf(folder);
		rmSync(folder, { recursive: true });
		figures.tried += 1;
		if (status !== 0) figures.failed.push(`${JSON.stringify(place)}: ${stderr}`);
		else if ((first.get(starter) ?? digest) !== digest)
			figures.failed.push(`${starter} differs under ${JSON.stringify(place)}`);
		first.set(starter, first.get(starter) ?? digest);
	});
	figures.tell();
	expect(figures.failed).toEqual([]);
});

/** How large the process is at its largest, binding so many wells one after the other [kB]. */
const largest = async (count: number): Promise<{ readonly size: number; readonly code: number | null }> => {
	const folder = mkdtempSync(join(tmpdir(), "casebound-steady-"));
	const text = readFileSync(STARTERS[2] ?? "", "utf8");
	const files = Array.from({ length: count }, (_, n) => {
		const file = join(folder, `well-${n}.yaml`);
		writeFileSync(file, text.replace("Osterby 11-6", `Osterby 11-6 number ${n}`));
		return file;
	});
	const args = [
		MAIN,
		"bind",
		...files,
		"--for",
		"landowner",
		"--threads",
		"1",
		"--out",
		join(folder, "papers"),
	];
	const child = spawn(process.execPath, args, { stdio: "ignore" });
	let size = 0;
	const look = setInterval(() => {
		try {
			const status = readFileSync(`/proc/${child.pid}/status`, "utf8");
			size = Math.max(size, Number(/VmHWM:\s+(\d+) kB/.exec(status)?.[1] ?? 0));
		} catch {
			// It has ended.
		}
	}, 100);
	const code = await new Promise<number | null>((resolve) => child.on("close", resolve));
	clearInterval(look);
	rmSync(folder, { recursive: true });
	return { size, code };
};

it("memory stays flat over many bindings in one process", async () => {
	const figures = new Figures("memory over bindings in one process");
	const count = Math.max(40, Math.round(MINUTES * 16));
	// The collector lets the process grow to its size first.
	const few = await largest(20);
	const many = await largest(count);
	figures.tried = count;
	figures.see(
		`${Math.round(few.size / 1024)} MB at most over 20, ${Math.round(many.size / 1024)} MB over ${count}`,
	);
	if (few.code !== 0 || many.code !== 0) figures.failed.push(`ended with ${few.code} and ${many.code}`);
	if (!(many.size < few.size * 1.25))
		figures.failed.push(`${few.size} kB over 20, ${many.size} kB over ${count}`);
	figures.tell();
	expect(figures.failed).toEqual([]);
});
