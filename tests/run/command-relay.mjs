import { fork } from "node:child_process";
import { once } from "node:events";
import { fileURLToPath } from "node:url";
import { runAsWorker } from "synckit";

/* Between a test, which waits, and the process of the command, which must not. */

let command;

const started = async () => {
	const one = fork(fileURLToPath(new URL("command-process.mjs", import.meta.url)), {
		stdio: ["ignore", "ignore", "inherit", "ipc"],
	});
	await once(one, "message");
	return one;
};

runAsWorker(async (request) => {
	command ??= await started();
	command.send(request);
	const [told] = await Promise.race([
		once(command, "message"),
		once(command, "exit").then(([code]) => [{ died: code }]),
	]);
	if ("died" in told) {
		command = undefined;
		throw new Error(`the process of the command ended with ${told.died}: ${request.args.join(" ")}`);
	}
	return told;
});
