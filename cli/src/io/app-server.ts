import { createServer, type Server } from "node:http";
import sirv from "sirv";

/** Ports that are tried one after the other where none was asked for. */
const PORTS_TRIED = 20;

/** What the app may do: run its own scripts, compiled ones too, and workers, and ask nobody. Its page says the same for hosts that set no headers. */
const policy = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join("; ");

const headers = Object.freeze({
  "Content-Security-Policy": policy,
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "no-referrer",
  "Cross-Origin-Opener-Policy": "same-origin",
  "Cross-Origin-Resource-Policy": "same-origin",
});

/** A page that is being served. */
export interface Serving {
  readonly port: number;
  close(): Promise<void>;
}

/**
 * Serves a folder of built files to this machine alone.
 *
 * @param folder the built app
 * @param first port to listen on; 0 takes any that is free
 * @param onlyThis do not try the ports after it
 * @throws the system's error where no port is free
 */
export async function serveApp(folder: string, first: number, onlyThis: boolean): Promise<Serving> {
  const files = sirv(folder, {
    etag: true,
    // looks at the folder with each request: a build that is replaced meanwhile is served as it is now
    dev: true,
    setHeaders(response, path) {
      response.setHeader("Cache-Control", path.startsWith("/assets/") ? "max-age=31536000, immutable" : "no-cache");
    },
  });
  const server = createServer((request, response) => {
    for (const [name, value] of Object.entries(headers)) response.setHeader(name, value);
    // a page elsewhere that points its own name at this machine must not reach it
    if (!/^(127\.0\.0\.1|localhost)(:\d+)?$/.test(request.headers.host ?? "")) {
      response.writeHead(421).end("Asked under another name.");
      return;
    }
    if (request.method !== "GET" && request.method !== "HEAD") {
      response.writeHead(405, { Allow: "GET, HEAD" }).end();
      return;
    }
    files(request, response, () => {
      response.writeHead(404).end("There is no such page.");
    });
  });
  const last = onlyThis || first === 0 ? first : first + PORTS_TRIED - 1;
  for (let port = first; ; port += 1) {
    try {
      return serving(server, await listen(server, port));
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== "EADDRINUSE" || port >= last) throw error;
    }
  }
}

function listen(server: Server, port: number): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, "127.0.0.1", () => {
      server.off("error", reject);
      const address = server.address();
      resolve(typeof address === "object" && address !== null ? address.port : port);
    });
  });
}

function serving(server: Server, port: number): Serving {
  return {
    port,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}
