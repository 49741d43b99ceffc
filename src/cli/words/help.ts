/** What --help prints. */
export const help = `Why two papers hold together, or do not.

  study --anchor FILE --candidate FILE [--candidate FILE …] [options]

  --anchor FILE      the paper to start from
  --candidate FILE   a paper held against it; give as many as you like
  --distance D       touching, where edges meet, or apart (default)
  --json             one JSON object instead of the report
  --format V         which version of it: v2 (default, with families and findings) or v1
  --board FILE       also a picture of the best candidate's comparison: .svg or .png

These belong to the picture before them, in pixels of that picture as it is seen:

  --width-mm N       width of the sheet in millimetres (default: its longer side is 305, which is 12 in)
  --crop X,Y,W,H     the part that is the sheet
  --card X,Y,W,H[,R] a white or grey card that takes the lamp out of the colours; R is the share of light that
                     it reflects, 0 to 1 (default 0.9)
  --chart X,Y,W,H    a chart of 24 patches in place of a card: the outer edges of its patches
  --whole            the whole picture is the paper. Without this, a paper that plainly lies on a table is cut out
                     of its picture before it is read, unless a part, a card or a chart is pointed out

Pictures are PNG, JPEG, WebP, TIFF, AVIF, GIF, BMP or HEIC. Paths start from the folder that you are in.
`;
