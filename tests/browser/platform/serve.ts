/** A bounded local server for one test file: static files from memory, and whatever a test answers itself. */
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname } from 'node:path';

export interface Served {
  readonly url: string;
  readonly close: () => Promise<void>;
}

export interface Asked {
  readonly method: string;
  readonly url: URL;
  readonly headers: IncomingMessage['headers'];
  readonly body: string;
}

export interface Answer {
  readonly status: number;
  readonly body?: Uint8Array | string;
  /** By the name's ending where it is left out. */
  readonly type?: string;
  readonly headers?: Readonly<Record<string, string>>;
}

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.json': 'application/json',
  '.woff2': 'font/woff2',
  '.wav': 'audio/wav',
};

const LARGEST_BODY = 1_000_000;

export async function serve(answer: (asked: Asked) => Answer | undefined): Promise<Served> {
  const server = createServer((request, response) => {
    let body = '';
    request.on('data', (piece: Buffer) => {
      body += piece.toString('utf8');
      if (body.length > LARGEST_BODY) request.destroy();
    });
    request.on('end', () => {
      const url = new URL(request.url ?? '/', 'http://127.0.0.1');
      reply(response, url, answer({ method: request.method ?? 'GET', url, headers: request.headers, body }));
    });
  });
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  const { port } = server.address() as AddressInfo;
  return {
    url: `http://127.0.0.1:${port}`,
    close: () =>
      new Promise((closed) => {
        server.close(() => closed());
        server.closeAllConnections();
      }),
  };
}

function reply(response: ServerResponse, url: URL, answer: Answer | undefined): void {
  const { status, body, type, headers } = answer ?? { status: 404 };
  response.writeHead(status, {
    'Content-Type': type ?? TYPES[extname(url.pathname)] ?? 'application/json',
    ...headers,
  });
  response.end(body);
}
