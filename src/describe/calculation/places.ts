import type { Origins, SourceSpot } from '../../problems/index.ts';

/** Where a job path was written, as short as a reader of one job's sheet needs it; null if nowhere. */
export type PlaceOf = (path: string) => string | null;

/**
 * File and line of the job paths: a file of the job by its name (`job.yaml:21`), any other from the
 * folder that holds the jobs (`company/rates.yaml:3`).
 */
export function placesFrom(origins: Origins): PlaceOf {
  const ofJob = [...origins.values()].find(({ from, spot }) => from === 'job' && spot !== null)?.spot;
  const jobFolder = ofJob == null ? '' : folderOf(ofJob.file);
  const jobsFolder = folderOf(jobFolder.slice(0, -1));
  return (path) => {
    const spot = nearestSpot(path, origins);
    if (spot === null) return null;
    const outer = [jobFolder, jobsFolder].find((folder) => folder !== '' && spot.file.startsWith(folder));
    return `${spot.file.slice(outer?.length ?? 0)}:${spot.line}`;
  };
}

/** `jobs/maple-court/` of `jobs/maple-court/job.yaml`. */
function folderOf(file: string): string {
  return file.slice(0, file.lastIndexOf('/') + 1);
}

/** The spot of a job path, or of the nearest thing it stands in. */
function nearestSpot(path: string, origins: Origins): SourceSpot | null {
  for (let at = path; at !== ''; at = at.includes('.') ? at.slice(0, at.lastIndexOf('.')) : '') {
    const origin = origins.get(at);
    if (origin !== undefined) return origin.spot;
  }
  return null;
}
