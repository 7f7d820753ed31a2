// A small stand-in for the server, as a plug-in of the development server: `npm run mock`.
import type { ServerResponse } from 'node:http';
import type { Plugin } from 'vite';
import * as answers from './answers.ts';
import { tile } from './tile.ts';
import { occupied } from './world.ts';

export function inventedServer(): Plugin {
  return {
    name: 'invented-server',
    configureServer(server) {
      server.middlewares.use('/api/v1', (request, response) => answer(new URL(request.url ?? '/', 'http://localhost'), response));
    },
  };
}

function answer({ pathname, searchParams }: URL, response: ServerResponse): void {
  const [, kind, id, what, , z, y, x] = pathname.split('/').map(decodeURIComponent);
  const periods = (searchParams.get('periods') ?? '../..').split(',');
  if (kind === 'taxa' && what === 'tiles') return sendTile(response, tile(occupied(id!), periods, Number(z), Number(x), Number(y)));
  const body = jsonFor(kind, id, what, searchParams, periods);
  response.statusCode = body === null ? 404 : 200;
  response.setHeader('Content-Type', body === null ? 'application/problem+json' : 'application/json');
  response.end(JSON.stringify(body ?? { title: 'Not found.', detail: `The invented world holds nothing at ${pathname}.`, status: 404 }));
}

function jsonFor(kind: string | undefined, id: string | undefined, what: string | undefined, query: URLSearchParams, periods: string[]): object | null {
  if (kind === 'about') return answers.about();
  if (kind === 'squares' && id !== undefined && what === 'change') return answers.squareChange(id, query.get('from') ?? '', query.get('to') ?? '');
  if (kind === 'squares' && id !== undefined) return answers.square(id, query.get('taxon'), periods);
  if (kind === 'places') return answers.places(query.get('q') ?? '');
  if (kind === 'editions') return { liveState: 1, editions: [] };
  if (kind === 'groups') return { groups: [{ name: 'Invented bees', taxa: 3, withRecords: 3 }] };
  if (kind === 'regions') return { regions: ['England', 'Scotland'] };
  if (kind === 'exports') return { rows: 120, atMost: false, bytes: 8_400 };
  if (kind !== 'taxa') return null;
  if (id === undefined) return answers.taxa(query.get('q') ?? '');
  const known = answers.taxon(id);
  if (known === null || what === undefined) return known;
  const parts: Record<string, () => object> = {
    presence: () => answers.presence(id, periods), arrivals: () => query.get('model') === 'true' ? answers.modelled(id) : answers.arrivals(id), spread: () => answers.spread(id),
    season: () => answers.season(id), forecast: () => answers.forecast(),
  };
  return parts[what]?.() ?? null;
}

function sendTile(response: ServerResponse, bytes: Uint8Array): void {
  response.setHeader('Content-Type', 'application/vnd.mapbox-vector-tile');
  response.end(bytes);
}
