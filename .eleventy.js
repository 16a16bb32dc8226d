/** Wiring only. src/render/ starts Eleventy and gives it the environment, the filters and the pages. */
export default function (config) {
  config.setUseGitIgnore(false);
  for (const folder of ['layouts', 'bodies', 'components', 'styles', 'scripts']) {
    config.ignores.add(`**/templates/${folder}/**`);
  }
  return { templateFormats: ['njk'] };
}
