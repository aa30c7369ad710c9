/** Words of a class: who takes part, and what is printed, saved and bought for everyone at once. */
export const rosterWords = {
  title: "A class",
  lead: "Everyone’s sheets on one stack of paper, everyone in one file, and what all of them still take together: pieces of the same batting are laid together, so less is left over than if each bought alone.",
  who: "Who takes part",
  everyone: "Everyone",
  nobody: "Nobody",
  nameless:
    "Without names: everyone is Person and a number, on paper and in the file, and keeps the number when others come or go. Notes stay out of the file.",
  person: (number: number): string => `Person ${number}`,
  again: (name: string, number: number): string => `${name} (${number})`,
  calledThere: (title: string, name: string): string => `${title}, on paper ${name}`,
  print: {
    padding: (count: number): string =>
      count === 1 ? "Print the padding sheets of 1 person" : `Print the padding sheets of ${count} people`,
    session: (count: number): string =>
      count === 1 ? "Print the session plan of 1 person" : `Print the session plans of ${count} people`,
    measuring: (count: number): string =>
      count === 1 ? "Print 1 blank measuring sheet" : `Print ${count} blank measuring sheets`,
  },
  ready: {
    padding: (names: readonly string[]): string =>
      `The padding sheets of ${names.join(", ")} go to the printer, each person’s on pages of their own with the name at the foot.`,
    session: (names: readonly string[]): string =>
      `The session plans of ${names.join(", ")} go to the printer, each person’s on a page of its own.`,
    measuring: (names: readonly string[]): string => `A blank measuring sheet each for ${names.join(", ")}.`,
  },
  failed: (name: string): string =>
    `The sheets of ${name} could not be put on paper: the tool made a mistake with them. Open that fitting and print it there.`,
  printAgain: "Print once more",
  putAway: "Done printing",
  saveFile: (count: number): string => (count === 1 ? "Save 1 to a class file" : `Save ${count} to one class file`),
  /** At the head of the file's name. */
  file: "class",
} as const;

/** What everyone is called on paper and in the file: by their own names, each once, or by their numbers, which count from 1 unless given. */
export function rosterNames(
  titles: readonly string[],
  isNamed: boolean,
  numbers: readonly number[] = titles.map((_, i) => i + 1),
): readonly string[] {
  const taken = new Set<string>();
  return titles.map((title, i) => {
    const own = isNamed && title.trim() !== "" ? title.trim() : rosterWords.person(numbers[i] ?? i + 1);
    let name = own;
    for (let number = 2; taken.has(name); number += 1) name = rosterWords.again(own, number);
    taken.add(name);
    return name;
  });
}

/** Words of the blank measuring sheet that has one page. */
export const shortMeasuringWords = {
  title: "Measuring sheet",
  lines: "On the level lines",
  whose: { body: "Person", form: "Form" },
  heads: {
    level: "Line",
    Girth: "all around",
    FrontArc: "front, seam to seam",
    BackArc: "back, seam to seam",
    place: "above the floor; form: below the nape",
    Breadth: "width straight across",
    Depth: "depth front to back",
  },
  lengths: "Everything else",
  sides: "Where left and right differ, write both: left / right. The long sheet has a drawing of each measurement.",
} as const;
