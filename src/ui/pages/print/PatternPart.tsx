import { useState } from "react";
import { fittingPatterns, type PatternGroup, patternGroups } from "../../../app/patterns/fittingPatterns";
import type { TitledPart } from "../../../app/patterns/titledPart";
import { chosenCloth } from "../../../app/steps/chosenCloth";
import { fileName, offerFile } from "../../../app/share/fileOffer";
import { armReading } from "../../../core/arm/armReadings";
import { type Cloth, untriedKnit, usualStretch, wovenWithoutEase } from "../../../core/cover/cloth";
import { fittingStep } from "../../../document/fitting";
import { armNotes } from "../../../text/arm";
import { patternScreenWords, patternTitles, patternWords } from "../../../text/patterns";
import { presentInstant } from "../../../text/moment";
import { projectionWords } from "../../../text/projection";
import { latePart } from "../../kit/rescue/latePart";
import { useDerived } from "../../kit/useDerived";
import { useFitting } from "../../kit/useStore";

const cloths: { readonly [kind in Cloth["kind"]]: Cloth } = {
  knit: untriedKnit(usualStretch),
  woven: wovenWithoutEase,
};
const clothKinds = ["knit", "woven"] as const;

type PatternKind = keyof typeof patternScreenWords.files;
const patternKinds: readonly PatternKind[] = ["letter", "a4", "sheet", "sheetA0", "svg", "dxf"];

/** What became of the file that was asked for last. */
type Drawn =
  | { readonly state: "not" | "making" | "failed" }
  | { readonly state: "done"; readonly pages: number | null };

function drawnWords(drawn: Drawn): string {
  if (drawn.state === "done") return patternScreenWords.made(drawn.pages);
  return drawn.state === "not" ? "" : patternScreenWords[drawn.state];
}

/** The view for a projector is fetched when it is asked for. */
const ProjectionView = latePart(() =>
  import("./projection/ProjectionView").then(({ ProjectionView }) => ProjectionView),
);

/** Everything that is cut, at its true size, as files for paper, plotter and cutter. What writes them is fetched when one is asked for. */
export function PatternPart() {
  const derived = useDerived();
  const fitting = useFitting();
  const { kind: cover, cloth: chosen } = chosenCloth(fitting);
  const hasCover = cover !== "none";
  const [cloth, setCloth] = useState<Cloth["kind"]>(chosen.kind);
  const [leftOut, setLeftOut] = useState<ReadonlySet<PatternGroup>>(new Set());
  const wish = { cloth: cloth === chosen.kind ? chosen : cloths[cloth], hasCover, leftOut };
  const [drawn, setDrawn] = useState<Drawn>({ state: "not" });
  const arm = derived.input === null ? null : armReading(derived.input.body);
  const there = patternGroups.filter(
    (group) => group === "batting" || (group === "cover" ? hasCover : arm?.kind === "whole"),
  );
  const isNothing = there.every((group) => leftOut.has(group));
  const notes = arm === null ? [] : armNotes(arm, fittingStep(fitting));
  const offer = async (kind: PatternKind) => {
    setDrawn({ state: "making" });
    try {
      const patterns = fittingPatterns(derived, fitting, wish, patternTitles(fittingStep(fitting)));
      if (patterns === null) setDrawn({ state: "not" });
      else {
        const { writePatterns } = await import("../../../app/patterns/writePatterns");
        const { content, type, pages } = await writePatterns(patterns, kind, patternWords);
        offerFile(document, fileName("patterns", "", presentInstant(), type), content, type);
        setDrawn({ state: "done", pages });
      }
    } catch {
      setDrawn({ state: "failed" });
    }
  };
  const [thrown, setThrown] = useState<readonly TitledPart[] | null>(null);
  const project = () => {
    ProjectionView.fetch();
    const patterns = fittingPatterns(derived, fitting, wish, patternTitles(fittingStep(fitting)));
    if (patterns !== null) setThrown(patterns.parts);
  };
  return (
    <section className="stack unprinted" aria-labelledby="patterns">
      <h2 id="patterns">{patternScreenWords.title}</h2>
      <p>{patternScreenWords.lead(hasCover)}</p>
      {notes.map((note) => (
        <p key={note}>{note}</p>
      ))}
      {there.length < 2 ? null : <GroupTicks groups={there} leftOut={leftOut} onLeaveOut={setLeftOut} />}
      {hasCover || arm?.kind === "whole" ? (
        <fieldset className="stack">
          <legend>{patternScreenWords.cloth(hasCover)}</legend>
          {clothKinds.map((kind) => (
            <label key={kind} className="tick">
              <input type="radio" name="coverCloth" checked={cloth === kind} onChange={() => setCloth(kind)} />
              {patternScreenWords.cloths[kind]}
            </label>
          ))}
        </fieldset>
      ) : null}
      {hasCover && cloth === "knit" ? <p className="quiet">{patternScreenWords.knitNote}</p> : null}
      <div className="row">
        {patternKinds.map((kind) => (
          <button
            key={kind}
            type="button"
            className="patch"
            disabled={isNothing || drawn.state === "making"}
            onClick={() => void offer(kind)}
          >
            {patternScreenWords.files[kind]}
          </button>
        ))}
      </div>
      <p>{projectionWords.openNote}</p>
      <div className="row">
        <button type="button" className="patch" disabled={isNothing} onClick={project}>
          {projectionWords.open}
        </button>
      </div>
      {thrown === null ? null : <ProjectionView parts={thrown} onClose={() => setThrown(null)} />}
      <p role="status">{drawnWords(drawn)}</p>
    </section>
  );
}

interface GroupTicksProps {
  readonly groups: readonly PatternGroup[];
  readonly leftOut: ReadonlySet<PatternGroup>;
  readonly onLeaveOut: (leftOut: ReadonlySet<PatternGroup>) => void;
}

/** What of it all is drawn: whoever cuts batting today needs no panels yet. */
function GroupTicks({ groups, leftOut, onLeaveOut }: GroupTicksProps) {
  return (
    <fieldset className="stack">
      <legend>{patternScreenWords.what}</legend>
      {groups.map((group) => (
        <label key={group} className="tick">
          <input
            type="checkbox"
            checked={!leftOut.has(group)}
            onChange={() => onLeaveOut(new Set(groups.filter((one) => leftOut.has(one) !== (one === group))))}
          />
          {patternScreenWords.groups[group]}
        </label>
      ))}
      {groups.includes("cover") ? <p className="quiet">{patternScreenWords.coverLater}</p> : null}
    </fieldset>
  );
}
