// How a note becomes an entry of the changelog: its words, without the commit that brought it. The package is one, so that no
// entry is about a dependency of it.
module.exports = {
  getReleaseLine: async ({ summary }) => `- ${summary.trim().replaceAll('\n', '\n  ').replace(/ +$/gm, '')}\n`,
  getDependencyReleaseLine: async () => '',
};
