import { describe, expect, test } from 'vitest';
import type { PreparedJob } from '../../src/commands/prepare.ts';
import { placesTable } from '../../src/describe/materials/places.ts';
import { showIn } from '../../src/describe/show/index.ts';
import { pieceNotes } from '../../src/describe/work-order/piece-notes.ts';
import { en, type Words } from '../../src/words/index.ts';
import { allJobs, jobNamed } from '../support/project.ts';

const jobs = allJobs();

function madeOf({ job, results }: PreparedJob) {
  return { job, results, show: showIn(job.unitSystem), words: en as Words };
}

/** A job with a change to its place `crusher`, its loads as they are. */
function withCrusher(id: string, changed: Partial<PreparedJob['job']['company']['places'][string]>) {
  const made = madeOf(jobNamed(jobs, id));
  const { company } = made.job;
  const crusher = company.places['crusher'];
  if (crusher === undefined) throw new Error('no crusher');
  const places = { ...company.places, crusher: { ...crusher, ...changed } };
  return { ...made, job: { ...made.job, company: { ...company, places } } };
}

describe('the table of places', () => {
  test('names the places that loads go to, each once, on a clock of 12 hours', () => {
    const rows = placesTable(madeOf(jobNamed(jobs, 'maple-court')))?.rows ?? [];
    expect(rows.map(({ cells }) => cells)).toEqual([
      [
        'East crusher yard, 400 Quarry Road',
        'Monday to Saturday',
        '7:00 am to 4:30 pm',
        '4:00 pm',
        '24″ long, 10″ thick',
        expect.any(String),
        '$150.00',
      ],
      [
        'Clean fill site, 77 Meadow Road',
        'Monday to Friday',
        '8:00 am to 4:00 pm',
        '3:30 pm',
        '12″ long, 6″ thick',
        'no',
        '$120.00',
      ],
    ]);
    expect(rows[1]?.note).toBe('Takes: Soil.');
  });

  test('a metric job has a clock of 24 hours and millimetres', () => {
    const [crusher] = placesTable(madeOf(jobNamed(jobs, 'garden-row')))?.rows ?? [];
    expect(crusher?.cells.slice(2, 5)).toEqual(['7:00 to 16:30', '16:00', '610 mm long, 254 mm thick']);
  });

  test('what nobody said is to be asked', () => {
    const made = withCrusher('maple-court', { open: null, largestPiece: null, rejectedUsd: null });
    const [crusher] = placesTable(made)?.rows ?? [];
    expect(crusher?.cells.slice(2, 5)).toEqual(['ask', 'ask', 'ask']);
    expect(crusher?.cells[6]).toBe('ask');
  });

  test.each([
    [[1, 2, 3, 4, 5, 6, 7], 'every day'],
    [[1, 2, 3, 5, 7], 'Monday to Wednesday, Friday, Sunday'],
    [[6], 'Saturday'],
    [[1, 2], 'Monday to Tuesday'],
  ])('open on the days %j: %s', (openOn, shown) => {
    const [crusher] = placesTable(withCrusher('maple-court', { openOn }))?.rows ?? [];
    expect(crusher?.cells[1]).toBe(shown);
  });

  test('says what costs more, and what a load with base costs', () => {
    const rows = placesTable(madeOf(jobNamed(jobs, 'full')))?.rows ?? [];
    const [yard, tip] = ['Breaker yard', 'Town tip'].map((name) =>
      rows.find(({ cells }) => cells[0]?.startsWith(name)),
    );
    expect(yard?.note).toContain('On top of the fee: Concrete with steel $14.27/load.');
    expect(yard?.note).toContain(
      'Sells base for $17.93/ton, a load for $31.07 at least. A load that goes back with base: $31.43/load instead of the fee.',
    );
    expect([yard?.cells[5], tip?.cells[5]]).toEqual(['of what it takes', 'no']);
    expect(tip?.note).toBe(
      'Takes: Clean concrete, Concrete with steel, Coated or mixed concrete, Masonry, Asphalt, Soil, Green waste, Other.',
    );
  });
});

describe('how small to break', () => {
  test('is said of each place that takes what is broken, and of none that takes soil alone', () => {
    expect(pieceNotes(madeOf(jobNamed(jobs, 'maple-court')))).toEqual([
      'Break to 24″ or less: East crusher yard takes nothing larger.',
    ]);
  });

  test('a thing that is thicker than its place takes is told, one of that thickness not', () => {
    const notes = (thicknessIn: number) =>
      pieceNotes(withCrusher('corner-walk', { largestPiece: { sideIn: 18, thicknessIn } }));
    const [thing] = Object.values(jobNamed(jobs, 'corner-walk').job.site.existing);
    const isThickIn = thing?.thicknessIn ?? 0;
    expect(notes(isThickIn)).toEqual(['Break to 18″ or less: East crusher yard takes nothing larger.']);
    const [, tooThick, ...others] = notes(isThickIn - 0.5);
    expect(tooThick).toMatch(
      /^.+ is \d.*″ thick, and East crusher yard takes \d.*″ at most: ask before loading it\.$/,
    );
    expect(tooThick).toContain(String(thing?.label));
    expect(others).toEqual([]);
  });

  test('nothing is said of a place that says no size', () => {
    expect(pieceNotes(withCrusher('corner-walk', { largestPiece: null }))).toEqual([]);
  });
});
