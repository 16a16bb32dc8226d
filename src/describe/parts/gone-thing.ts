import type { Job } from '../../calculate/job.ts';
import type { PublicText } from '../../calculate/text.ts';

/**
 * What something that goes is called, by the id its cargo has: of a flat or hollow thing its own; of posts,
 * steps and green with what it is before it.
 */
export function goneLabel({ site }: Job, id: string): PublicText | undefined {
  const [kind = '', own = ''] = id.split('.');
  const others: Readonly<Record<string, Readonly<Record<string, { readonly label: PublicText }>>>> = {
    posts: site.posts,
    'old-steps': site.oldSteps,
    green: site.green,
  };
  return (site.existing[id] ?? site.hollow[id] ?? others[kind]?.[own])?.label;
}
