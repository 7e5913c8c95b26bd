import type { JobCard } from '#shelf';

/** Jobs that hold every word searched for, somewhere in name, engine, people, remark or tags. */
export function found(
  jobs: readonly JobCard[],
  words: string,
  tag: string | null,
): readonly JobCard[] {
  const wanted = plain(words)
    .split(/\s+/)
    .filter((word) => word !== '');
  return jobs.filter(({ name, engine, notes }) => {
    const { builder, customer, remark, tags } = notes;
    if (tag !== null && !tags.some((own) => plain(own) === plain(tag))) return false;
    const text = plain([name, engine ?? '', builder, customer, remark, ...tags].join(' '));
    return wanted.every((word) => text.includes(word));
  });
}

/** Every tag of some jobs, once, in the order of the alphabet. */
export function tagsOf(jobs: readonly JobCard[]): readonly string[] {
  const tags = jobs.flatMap(({ notes }) => notes.tags.map((tag) => [plain(tag), tag] as const));
  return [...new Map(tags).values()].toSorted((a, b) => a.localeCompare(b));
}

/** Small letters without accents, so that a search need not know how it was written. */
function plain(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/\p{Mark}/gu, '')
    .toLowerCase();
}
