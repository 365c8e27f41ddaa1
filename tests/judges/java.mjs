import { readFileSync } from "node:fs";
import { delimiter, join } from "node:path";
import { isThere, outFolder, run } from "./run.mjs";

let classes;

/** Compiles the runners beside `pom.xml` and brings what they call; says why where that cannot be done. */
export const javaClasses = () => {
	classes ??= compiled();
	return classes;
};

const compiled = () => {
	if (!isThere("java") || !isThere("mvn")) return { absent: "no Java or no Maven on this machine" };
	const paths = join(outFolder, "class-path.txt");
	const built = run("mvn", [
		...["-q", "-B", "-f", "tests/judges/java/pom.xml", "compile"],
		...["dependency:build-classpath", `-Dmdep.outputFile=${paths}`],
	]);
	if (built.status !== 0) return { absent: `Maven could not bring it: ${built.stdout.split("\n")[0]}` };
	return { classPath: [join(outFolder, "java/classes"), readFileSync(paths, "utf8").trim()].join(delimiter) };
};

export const versionOnPath = (classPath, artifact) =>
	new RegExp(`${artifact}-(\\d+(\\.\\d+)*)\\.jar`).exec(classPath)?.[1] ?? "version not told";
