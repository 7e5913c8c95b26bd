/** What the readings can't tell: who built, for whom, what else, and words to find the job by. */
export interface JobNotes {
  readonly builder: string;
  readonly customer: string;
  readonly remark: string;
  readonly tags: readonly string[];
}

export const noNotes: JobNotes = { builder: '', customer: '', remark: '', tags: [] };

/** The most that is kept, in characters; `tags` is how many. */
export const MOST_NOTED = { name: 120, remark: 300, tag: 40, tags: 12 } as const;

/** Notes as they are kept: no white space around or doubled, no tag twice, none empty, cut to the most. */
export function tidyNotes({ builder, customer, remark, tags }: JobNotes): JobNotes {
  const once = new Map(
    tags.map((tag) => plain(tag, MOST_NOTED.tag)).map((tag) => [tag.toLowerCase(), tag] as const),
  );
  return {
    builder: plain(builder, MOST_NOTED.name),
    customer: plain(customer, MOST_NOTED.name),
    remark: plain(remark, MOST_NOTED.remark),
    tags: [...once.values()].filter((tag) => tag !== '').slice(0, MOST_NOTED.tags),
  };
}

function plain(text: string, most: number): string {
  return text.replace(/\s+/g, ' ').trim().slice(0, most).trim();
}
