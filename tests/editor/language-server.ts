import { type ChildProcessWithoutNullStreams, spawn } from "node:child_process";
import { createRequire } from "node:module";

/** A position as editors count: lines and characters from 0. */
export interface Position {
	readonly line: number;
	readonly character: number;
}

export interface Completion {
	readonly label: string;
	readonly documentation: string;
}

export interface Complaint {
	readonly message: string;
	readonly line: number;
}

type Message = Readonly<Record<string, unknown>>;

const SETTINGS = {
	yaml: {
		validate: true,
		hover: true,
		completion: true,
		schemaStore: { enable: false },
		format: { enable: false },
	},
};

const SERVER = createRequire(import.meta.url).resolve("yaml-language-server/bin/yaml-language-server");

/** Markdown or plain text of whatever form the protocol allows. */
const plain = (content: unknown): string => {
	if (typeof content === "string") return content;
	if (Array.isArray(content)) return content.map(plain).join("\n");
	return typeof content === "object" && content !== null && "value" in content ? String(content.value) : "";
};

const member = (node: unknown, name: string): unknown =>
	typeof node === "object" && node !== null ? (node as Record<string, unknown>)[name] : undefined;

/** An editor's end of the Language Server Protocol: enough of it to open a file, and to ask about a place in it. */
export class EditorSession {
	readonly #server: ChildProcessWithoutNullStreams;
	readonly #waiting = new Map<number, (result: unknown) => void>();
	readonly #complaints = new Map<string, readonly Complaint[]>();
	#onComplaints: (() => void) | undefined;
	#buffer = Buffer.alloc(0);
	#id = 0;

	constructor(folder: string) {
		this.#server = spawn(process.execPath, [SERVER, "--stdio"], { cwd: folder });
		this.#server.stdout.on("data", (chunk: Buffer) => this.#receive(chunk));
	}

	static async open(folder: string, folderUri: string): Promise<EditorSession> {
		const session = new EditorSession(folder);
		await session.#ask("initialize", {
			processId: process.pid,
			rootUri: folderUri,
			workspaceFolders: [{ uri: folderUri, name: "wells" }],
			capabilities: {
				workspace: { configuration: true, didChangeConfiguration: { dynamicRegistration: true } },
				textDocument: {
					completion: { completionItem: { documentationFormat: ["markdown", "plaintext"] } },
					hover: { contentFormat: ["markdown", "plaintext"] },
				},
			},
		});
		session.#send({ method: "initialized", params: {} });
		session.#send({ method: "workspace/didChangeConfiguration", params: { settings: SETTINGS } });
		return session;
	}

	/** Opens a text under an address; gives what the server finds wrong in it. */
	async show(uri: string, text: string): Promise<readonly Complaint[]> {
		this.#complaints.delete(uri);
		this.#send({
			method: "textDocument/didOpen",
			params: { textDocument: { uri, languageId: "yaml", version: 1, text } },
		});
		for (;;) {
			const complaints = this.#complaints.get(uri);
			if (complaints !== undefined) return complaints;
			await new Promise<void>((resolve) => {
				this.#onComplaints = resolve;
			});
		}
	}

	async completions(uri: string, position: Position): Promise<readonly Completion[]> {
		const result = await this.#ask("textDocument/completion", { textDocument: { uri }, position });
		const items = Array.isArray(result) ? result : member(result, "items");
		return (Array.isArray(items) ? items : []).map((item) => ({
			label: String(member(item, "label")),
			documentation: plain(member(item, "documentation")),
		}));
	}

	async hover(uri: string, position: Position): Promise<string> {
		return plain(
			member(await this.#ask("textDocument/hover", { textDocument: { uri }, position }), "contents"),
		);
	}

	async close(): Promise<void> {
		await this.#ask("shutdown", null);
		this.#send({ method: "exit" });
		this.#server.kill();
	}

	#ask(method: string, params: unknown): Promise<unknown> {
		this.#id += 1;
		const id = this.#id;
		const answer = new Promise<unknown>((resolve) => this.#waiting.set(id, resolve));
		this.#send({ id, method, params });
		return answer;
	}

	#send(message: Message): void {
		const body = JSON.stringify({ jsonrpc: "2.0", ...message });
		this.#server.stdin.write(`Content-Length: ${Buffer.byteLength(body)}\r\n\r\n${body}`);
	}

	#receive(chunk: Buffer): void {
		this.#buffer = Buffer.concat([this.#buffer, chunk]);
		for (;;) {
			const head = this.#buffer.indexOf("\r\n\r\n");
			if (head < 0) return;
			const length = Number(
				/Content-Length: (\d+)/i.exec(this.#buffer.subarray(0, head).toString())?.[1] ?? 0,
			);
			const end = head + 4 + length;
			if (this.#buffer.length < end) return;
			const body = this.#buffer.subarray(head + 4, end).toString();
			this.#buffer = this.#buffer.subarray(end);
			this.#handle(JSON.parse(body) as Message);
		}
	}

	#handle(message: Message): void {
		const { id, method, params, result } = message;
		if (method === undefined && typeof id === "number") {
			this.#waiting.get(id)?.(result);
			this.#waiting.delete(id);
		} else if (method === "workspace/configuration") {
			const items = member(params, "items");
			const asked = Array.isArray(items) ? items : [];
			this.#send({
				id,
				result: asked.map((item) => member(SETTINGS, String(member(item, "section"))) ?? null),
			});
		} else if (method === "textDocument/publishDiagnostics") {
			const found = member(params, "diagnostics");
			this.#complaints.set(
				String(member(params, "uri")),
				(Array.isArray(found) ? found : []).map((each) => ({
					message: String(member(each, "message")),
					line: Number(member(member(member(each, "range"), "start"), "line")),
				})),
			);
			this.#onComplaints?.();
		} else if (id !== undefined) this.#send({ id, result: null });
	}
}
