// Where on the desk someone stands, as the address says it.

/** What the review queue is narrowed to; null for everything. */
export interface Filter { doubt: string | null; taxon: string | null; batch: string | null }

export type Route = { place: 'imports' } | { place: 'import'; id: string } | { place: 'review'; filter: Filter } | { place: 'editions' } | { place: 'scheme' };

export const EVERYTHING: Filter = { doubt: null, taxon: null, batch: null };

export function readRoute(hash: string): Route {
  const [path = '', query = ''] = hash.replace(/^#/, '').split('?');
  const [place, id] = path.split('/');
  if (place === 'review') {
    const said = new URLSearchParams(query);
    const part = (name: string) => said.get(name) || null;
    return { place: 'review', filter: { doubt: part('doubt'), taxon: part('taxon'), batch: part('batch') } };
  }
  if (place === 'editions' || place === 'scheme') return { place };
  return place === 'imports' && id ? { place: 'import', id: decoded(id) } : { place: 'imports' };
}

export function writeRoute(route: Route): string {
  if (route.place === 'imports' || route.place === 'editions' || route.place === 'scheme') return `#${route.place}`;
  if (route.place === 'import') return `#imports/${encodeURIComponent(route.id)}`;
  const said = Object.entries(route.filter).filter((pair): pair is [string, string] => pair[1] !== null);
  return said.length === 0 ? '#review' : `#review?${new URLSearchParams(said).toString()}`;
}

/** A half-written escape, as a hand may leave it, stands for itself. */
function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
