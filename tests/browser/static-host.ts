/**
 * A static host as `docs/hosting.md` asks for one: files below a sub-path, packed, with its headers, and nothing else. It
 * counts what it sends, can begin to serve another version, and can go away.
 */
import { createHash } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo, Socket } from 'node:net';
import { extname, join, normalize } from 'node:path';
import { gzipSync } from 'node:zlib';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.wav': 'audio/wav',
  '.webmanifest': 'application/manifest+json',
};
const PACKED = new Set(['.html', '.js', '.css', '.svg', '.webmanifest', '.wav']);
const PLACE = '/training/underlawn/';

export interface Sent {
  readonly path: string;
  readonly status: number;
  /** Of the body as it went over the line. */
  readonly bytes: number;
}

export interface StaticHost {
  readonly url: string;
  /** What was sent since it was last emptied. */
  readonly sent: Sent[];
  serve(folder: string): void;
  /** Keeps back every file that the pattern names until it is let go. */
  hold(pattern: RegExp): () => void;
  stop(): Promise<void>;
  /** Again, at the same address. */
  start(): Promise<void>;
}

export async function staticHost(first: string): Promise<StaticHost> {
  let folder = first;
  let server: Server | undefined;
  let port = 0;
  let held: { readonly pattern: RegExp; readonly until: Promise<void> } | undefined;
  const sockets = new Set<Socket>();
  const sent: Sent[] = [];

  async function answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const path = decodeURIComponent(new URL(request.url ?? '/', 'http://host').pathname);
    const name = path.startsWith(PLACE) ? normalize(path.slice(PLACE.length) || 'index.html') : '..';
    if (held?.pattern.test(name)) await held.until;
    const file = join(folder, name);
    const done = (status: number, headers: Record<string, string>, body: Uint8Array = new Uint8Array()) => {
      sent.push({ path: name, status, bytes: body.length });
      response.writeHead(status, headers).end(body);
    };
    if (name.startsWith('.') || !existsSync(file)) return done(404, {});
    const type = extname(name);
    const plain = readFileSync(file);
    const etag = `"${createHash('sha256').update(plain).digest('hex').slice(0, 16)}"`;
    const headers = {
      'content-type': TYPES[type] ?? 'application/octet-stream',
      'cache-control': name.startsWith('assets/') ? 'public, max-age=31536000, immutable' : 'no-cache',
      'content-security-policy': "frame-ancestors 'none'",
      'x-content-type-options': 'nosniff',
      vary: 'Accept-Encoding, Origin',
      etag,
    };
    if (request.headers['if-none-match'] === etag) return done(304, headers);
    if (!PACKED.has(type)) return done(200, headers, plain);
    done(200, { ...headers, 'content-encoding': 'gzip' }, gzipSync(plain));
  }

  async function start(): Promise<void> {
    const made = createServer((request, response) => void answer(request, response));
    made.on('connection', (socket) => {
      sockets.add(socket);
      socket.on('close', () => sockets.delete(socket));
    });
    await new Promise<void>((listening) => made.listen(port, '127.0.0.1', listening));
    port = (made.address() as AddressInfo).port;
    server = made;
  }
  async function stop(): Promise<void> {
    const closing = server;
    if (closing === undefined) return;
    server = undefined;
    const closed = new Promise((over) => closing.close(over));
    for (const socket of sockets) socket.destroy();
    await closed;
  }

  await start();
  return {
    url: `http://127.0.0.1:${port}${PLACE}`,
    sent,
    serve(next) {
      folder = next;
    },
    hold(pattern) {
      let letGo = () => {};
      const until = new Promise<void>((over) => {
        letGo = over;
      });
      held = { pattern, until };
      return () => {
        held = undefined;
        letGo();
      };
    },
    stop,
    start,
  };
}
