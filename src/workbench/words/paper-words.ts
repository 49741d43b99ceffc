/** What settling where a paper lies on its photograph is called, as a step that can be undone. */
export const paperWords = {
  whole: 'say that the whole picture is the paper',
  ask: 'put a paper back into its picture',
} as const;
