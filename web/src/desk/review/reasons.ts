// Reasons given lately, newest first, for the next record with the same fault. They stay on this computer until the person signs out.

const KEY = 'rangemap.reasons';
const KEPT = 6;

export function recentReasons(storage: Pick<Storage, 'getItem'>): string[] {
  try {
    const kept: unknown = JSON.parse(storage.getItem(KEY) ?? '[]');
    return Array.isArray(kept) ? kept.filter((reason): reason is string => typeof reason === 'string').slice(0, KEPT) : [];
  } catch {
    return [];
  }
}

export function keepReason(storage: Pick<Storage, 'getItem' | 'setItem'>, reason: string): void {
  const kept = [reason, ...recentReasons(storage).filter((other) => other !== reason)].slice(0, KEPT);
  storage.setItem(KEY, JSON.stringify(kept));
}

export const forgetReasons = (storage: Pick<Storage, 'removeItem'>) => storage.removeItem(KEY);
