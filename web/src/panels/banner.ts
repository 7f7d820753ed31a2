import { api } from '../api.ts';
import { question } from '../loading.ts';

/** Says whose data this is; demo data are called invented in so many words. */
export function mountBanner(banner: HTMLElement, notices: HTMLElement): void {
  question<Awaited<ReturnType<typeof api.about>>>((answer) => {
    if (answer.kind !== 'ready') return;
    const { demo, name, notice } = answer.value;
    banner.hidden = !demo;
    banner.textContent = 'Invented demo data. No species, person or place here was observed.';
    notices.textContent = [name, notice].filter((text) => text).join(' · ');
  }).ask((signal) => api.about(signal));
}
