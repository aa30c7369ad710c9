/**
 * The words of the trade, as a list of what is not said: a word in a sense, with what is said instead, a planted sentence
 * that the pattern must find, and the places where the same letters mean something else, each with its reason.
 */
export interface NotSaid {
  readonly not: RegExp;
  readonly say: string;
  readonly planted: string;
  readonly except?: readonly Exception[];
}

export interface Exception {
  /** What the sentence, or the name of its source, holds. */
  readonly where: RegExp;
  readonly because: string;
}

const fileWords: Exception = {
  where: /^public\/|^src\/document\//,
  because: "a file's keys are engineering terms (girth, spread, thickness), and its descriptions explain them",
};

export const glossary: readonly NotSaid[] = [
  // Material and pieces
  {
    not: /\bwadding\b|padding stuff/i,
    say: "batting",
    planted: "Cut it from wadding.",
    except: [
      { where: /Batting is called wadding/, because: "once in the README, for countries where it is called so" },
    ],
  },
  { not: /\bpl(y|ies)\b/i, say: "layer", planted: "Cut two plies." },
  { not: /\bslabs?\b/i, say: "piece, panel", planted: "Pin the slab." },
  {
    not: /\bround(s|ed)?\b/i,
    say: "around; wrap; all measurements; a new fitting",
    planted: "Wrap it all round the waist.",
    except: [{ where: /round bone/i, because: "the shape of the wrist bone" }],
  },
  {
    not: /\bskin\b|\bshell\b/i,
    say: "outer wrap, cover, outline",
    planted: "The body shell.",
    except: [{ where: /never through to the skin/, because: "the skin of the person who is measured" }],
  },
  { not: /\bknobs?\b/i, say: "tuning layer", planted: "Turn the knob." },
  { not: /\barcs?\b/i, say: "front waist, back hip, …", planted: "Waist front arc" },
  { not: /across back/i, say: "across shoulders", planted: "Across back" },
  {
    not: /\bpull(ed|s)? (\S+ ){0,3}thin\b|\bpeel(ed)?\b|\beas(e|es|ed|ing)\b/i,
    say: "feather; take off; narrow the tuning layer",
    planted: "Over the mark: ease the last layer.",
  },
  {
    not: /\bdeep(er|est)?\b|\bdepths?\b/i,
    say: "height, thickness; depth front to back",
    planted: "4 in deep",
    except: [{ where: /deep breath|depth front to back/i, because: "a breath; the straight measure front to back" }],
  },
  { not: /\bbreadths?\b|\bbroad\b/i, say: "width straight across", planted: "Waist breadth" },
  { not: /\bdrops?\b/i, say: "below the nape; slope", planted: "The shoulder drop." },
  {
    not: /\b(the|its|a|his|their|form’s|weight(ed)?|widen) stand\b(?!-)/i,
    say: "base",
    planted: "Weight the stand.",
  },
  { not: /cut on the fold/i, say: "center line (a whole drawing is not cut on a fold)", planted: "Cut on the fold" },
  { not: /\bbutt(ed|s|ing)?\b/i, say: "edges meet, edge to edge", planted: "ends butted at a side seam" },
  { not: /size tables?\b/i, say: "size chart", planted: "Choose a size table." },
  { not: /\bgirths?\b/i, say: "all around", planted: "Three girths", except: [fileWords] },
  {
    not: /\blevels\b|\b(every|each|this|that|which|by) level\b(?! line)/i,
    say: "level lines",
    planted: "Read every level.",
    except: [{ where: /levels of nesting/, because: "the nesting of a file" }],
  },
  { not: /\bstations?\b/i, say: "level line", planted: "At each station." },
  { not: /waist line\b/i, say: "waistline", planted: "above the waist line" },
  {
    not: /\bcloth\b|broken line|chain line|notches meet/i,
    say: "fabric; dashed; dash-dot; match",
    planted: "any cloth",
  },
  { not: /\b(arm|armhole) plates?\b/i, say: "arm cap disc; armhole", planted: "the edge of the arm plate" },
  {
    not: /\bslim\b|\bbelly\b|sway ?back|full arm|\bhollow\b/i,
    say: "the place and the figure",
    planted: "Shapes the ribs and the belly.",
    except: [{ where: /hollow of the throat|throat hollow/i, because: "a landmark that is called so" }],
  },
  // Screens and actions
  {
    not: /\bshelf\b|\b(on|from) (the|your) table\b|at the door\b|the door\b/i,
    say: "Home, Fittings",
    planted: "Your own fitting goes back on the shelf.",
  },
  { not: /^on paper$/i, say: "Print", planted: "On paper" },
  { not: /^on the wall$/i, say: "Class view", planted: "On the wall" },
  { not: /turning figure/i, say: "3-D view", planted: "Turning figure" },
  {
    not: /^(Back|Forward)$/,
    say: "Previous step, Next step",
    planted: "Forward",
  },
  {
    not: /\breadings?\b|\bre-?read (the|every|each|it)\b|\bread (the (bust|underbust|waist|high hip|full hip|level|…)|it once|every|each)\b/i,
    say: "measure, measurement (the tape reads)",
    planted: "Keep the reading",
    except: [{ where: /Ignore this reading/, because: "the name the glossary gives this action" }],
  },
  { not: /plan(s|ned)? the rest|planned anew/i, say: "update the remaining pieces", planted: "Plan the rest." },
  {
    not: /leave it out|\ba slip: /i,
    say: "Ignore this reading",
    planted: "A slip: ignore it",
    except: [{ where: /Leave it out otherwise|it out\.?$/i, because: "a measurement that need not be taken" }],
  },
  { not: /\btoo (big|small)\b/i, say: "padding over, padding short", planted: "Too big by 3/8 in" },
  { not: /\bworth\b/i, say: "one layer adds", planted: "What one layer is worth" },
  { not: /\bbelie(ve[sd]?|f)\b/i, say: "starting figure; from your tape", planted: "believed before" },
  { not: /\b(taught|teach(es)?|learn(s|ed|t)?)\b/i, say: "from your tape", planted: "What the tape has taught" },
  { not: /\btold\b/i, say: "said, shown", planted: "as the tape has told" },
  {
    not: /\bput (it |them )?(away|back)\b|take out again|\berase/i,
    say: "Archive, Restore, Delete permanently",
    planted: "Erase for good",
  },
  { not: /^removed?( \S+)?\.?$/i, say: "Delete", planted: "Removed …." },
  { not: /\bwanted\b/i, say: "person", planted: "wanted" },
  { not: /made[- ]up/i, say: "sample person", planted: "a made-up person" },
  {
    not: /full reading|^keep the (reading|measurement)|^keep \d/i,
    say: "all measurements; Save",
    planted: "Keep 31 3/8",
  },
  {
    not: /\b(is|reads?) right\b(?! (out|already))|more or less is right/i,
    say: "on target",
    planted: "every level reads right",
  },
  { not: /should be there\b/i, say: "should be on target", planted: "should be there" },
  {
    not: /all around smaller|smaller all around|before it goes up\b/i,
    say: "1/2 in less on every edge",
    planted: "before it goes up",
  },
  { not: /pins out: in/i, say: "pins in, pins out", planted: "pins out: in" },
  { not: /\bguess(es|ed)?\b/i, say: "estimated", planted: "One figure is guessed." },
  // Kind
  { not: /\b(she|her|hers|herself)\b/i, say: "the person", planted: "as she wears it" },
  {
    not: /was expected|most lie\b|\bbut expected\b/i,
    say: "what slip it would be; it is right",
    planted: "most lie between",
  },
  // US English
  {
    not: /\b(centre[sd]?|centred|grey|colou?r(?<=colour)\w*|\w*metres?|fibres?|towards|favourite|analyse|mould|\w+ise[sd]?(?<=(?:organ|real|recogn|minim)ise[sd]?)|aluminium|whilst)\b/i,
    say: "US English",
    planted: "About one metre of batting fibres.",
  },
  { not: /about one metre|yard and a bit/i, say: "the length in the reader's unit", planted: "about one metre" },
];

/** Every sentence that says what is not said: which, where from, and what to say instead. */
export interface Sentence {
  readonly from: string;
  readonly text: string;
}

export const misuses = (sentences: readonly Sentence[]): readonly string[] =>
  sentences.flatMap(({ from, text }) =>
    glossary.flatMap(({ not, say, except = [] }) => {
      const found = not.exec(text);
      if (found === null || except.some(({ where }) => where.test(text) || where.test(from))) return [];
      return [`${from}: “${text}” says “${found[0]}”; say: ${say}`];
    }),
  );
