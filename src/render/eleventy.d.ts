/** The part of Eleventy 3 that we use; it ships no types. */
declare module '@11ty/eleventy' {
  export type EleventyConfig = {
    setUseTemplateCache(isUsed: boolean): void;
    setLibrary(engine: 'njk', environment: unknown): void;
    addGlobalData(name: string, data: unknown): void;
  };
  export type EleventyOptions = {
    source: 'script' | 'cli';
    configPath: string;
    quietMode: boolean;
    config: (config: EleventyConfig) => void;
  };
  export class Eleventy {
    constructor(input: string, output: string, options: EleventyOptions);
    errorHandler: { once: (severity: string, error: unknown, message: string) => void };
    init(): Promise<void>;
    toJSON(): Promise<{ outputPath: string; content: string }[]>;
  }
}
