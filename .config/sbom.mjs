import { execFileSync } from "node:child_process";
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { shippedPackages } from "./third-party.mjs";

/*
 * A bill of materials (CycloneDX) of the shipped tool, into out/sbom.cdx.json: npm's own of the whole tree, and of it what
 * is in the bundle or installed beside it. The build has to have run. The same tree gives the same bytes.
 */

const root = fileURLToPath(new URL("..", import.meta.url));
const npm = process.platform === "win32" ? "npm.cmd" : "npm";
const whole = JSON.parse(
	execFileSync(npm, ["sbom", "--sbom-format", "cyclonedx", "--package-lock-only"], {
		cwd: root,
		encoding: "utf8",
		maxBuffer: 1 << 28,
	}),
);
const bundled = JSON.parse(readFileSync(join(root, "dist", "bundled.json"), "utf8"));
const shipped = shippedPackages(
	root,
	bundled.map((place) => join(root, place)),
);
const isShipped = ({ name, group, version }) =>
	shipped.some((each) => each.name === (group ? `${group}/${name}` : name) && each.version === version);

const components = whole.components.filter(isShipped).map((component) => ({ ...component, scope: "required" }));
const kept = new Set([whole.metadata.component["bom-ref"], ...components.map((each) => each["bom-ref"])]);
const { serialNumber: _, ...rest } = whole;
const { timestamp: __, ...metadata } = whole.metadata;
const bill = {
	...rest,
	metadata: { ...metadata, component: { ...metadata.component, type: "application", name: "casebound" } },
	components,
	dependencies: whole.dependencies
		.filter(({ ref }) => kept.has(ref))
		.map(({ ref, dependsOn }) => ({ ref, dependsOn: dependsOn.filter((each) => kept.has(each)) })),
};
mkdirSync(join(root, "out"), { recursive: true });
writeFileSync(join(root, "out", "sbom.cdx.json"), `${JSON.stringify(bill, null, "\t")}\n`);
process.stdout.write(`out/sbom.cdx.json: ${components.length} components\n`);
