import { isValidElement, type ReactElement, type ReactNode, useCallback, useEffect, useRef } from "react";
import { paddingWords } from "../../../text/padding";
import { stopWords } from "../../../text/stops";
import { useAnnounce } from "../Announcer";
import { StopSlab, type StopSlabProps } from "./StopSlab";
import "./stop.css";

/**
 * One stop of the work at the form: which act it is, the instruction in one sentence, one picture, what the hands do in
 * order, and one slab to press when it is done.
 */
export interface StopFrameProps<Act extends string> {
  readonly region: string;
  readonly trail: { readonly [act in Act]?: string };
  readonly act: Act;
  /** What the hands do: work on the form, or read and type, where the keys need the room. */
  readonly kind: "working" | "reading";
  readonly title: string;
  readonly sentence: ReactNode;
  readonly picture: ReactNode;
  /** How long it takes. */
  readonly minutes?: number;
  /** What is read aloud; left out, nothing is. */
  readonly speech?: string;
  /** The stops of this act, to go to any of them. */
  readonly route?: ReactNode;
  /** What the last act changed, said once beside the next. */
  readonly news?: ReactNode;
  readonly children: ReactNode;
  /** What comes after it, above the slab. */
  readonly after?: ReactNode;
  /** The one thing to press; a part of its own where its words follow every letter that is typed. */
  readonly slab: StopSlabProps | ReactElement;
  /** Small ways out beside the work: never in the way of the slab. */
  readonly ways: ReactNode;
}

export function StopFrame<Act extends string>(props: StopFrameProps<Act>) {
  const { region, act, kind, title, sentence, picture, news = null, children, after = null, slab, ways } = props;
  const heading = useHeadingFirst(title);
  return (
    <section className={`stop stop-${kind} stop-at-${act}${picture === null ? " stop-plain" : ""}`} aria-label={region}>
      <StopTop {...props} />
      <header className="stop-head">
        <h1 className="stop-title" ref={heading} tabIndex={-1}>
          {title}
        </h1>
        {sentence === "" ? null : <p className="stop-sentence">{sentence}</p>}
        {news}
      </header>
      {picture === null ? null : <div className="stop-picture">{picture}</div>}
      <div className="stop-work">
        {children}
        <div className="stop-ways">{ways}</div>
        {after}
      </div>
      {isValidElement(slab) ? slab : <StopSlab {...(slab as StopSlabProps)} />}
    </section>
  );
}

function StopTop<Act extends string>({ trail, act, minutes, speech, route = null }: StopFrameProps<Act>) {
  const acts = Object.keys(trail) as Act[];
  return (
    <div className="stop-top apart">
      <ol className={route === null ? "stop-trail" : "stop-trail stop-trail-beside"}>
        {acts.map((name) => (
          <li key={name} aria-current={name === act ? "step" : undefined}>
            {trail[name]}
          </li>
        ))}
      </ol>
      {route}
      {minutes === undefined ? null : <p className="stop-minutes">{stopWords.minutes(minutes)}</p>}
      {speech === undefined ? null : <SpeakButton sentence={speech} />}
    </div>
  );
}

/** A new instruction is where one looks and listens first; whoever goes on typing stays in the field, and hears it there. */
function useHeadingFirst(title: string) {
  const announce = useAnnounce();
  const heading = useRef<HTMLHeadingElement>(null);
  const last = useRef<string | null>(null);
  useEffect(() => {
    if (last.current === title) return;
    const isAnother = last.current !== null;
    last.current = title;
    if (document.activeElement instanceof HTMLInputElement) {
      if (isAnother) announce(title);
      return;
    }
    heading.current?.focus({ preventScroll: true });
    heading.current?.closest(".place")?.scrollTo?.(0, 0);
  }, [title, announce]);
  return heading;
}

/** What the hands do, in their order. */
export function HandSteps({ steps }: { readonly steps: readonly { readonly title: string; readonly text: string }[] }) {
  return (
    <ol className="hand-steps">
      {steps.map(({ title, text }, i) => (
        <li key={`${title} ${text}`}>
          <span className="hand-number" aria-hidden>
            {i + 1}
          </span>
          <strong>{title}</strong>
          <span>{text}</span>
        </li>
      ))}
    </ol>
  );
}

/** Reads the action at hand aloud, where the browser has a voice. */
function SpeakButton({ sentence }: { readonly sentence: string }) {
  const speak = useSpeech();
  if (speak === null) return null;
  return (
    <button type="button" className="stop-speak" aria-label={paddingWords.speak} onClick={() => speak(sentence)}>
      <svg width="26" height="22" viewBox="0 0 26 22" aria-hidden focusable="false">
        <path
          d="M2 8V14H6L12 19V3L6 8ZM16 7Q19 11 16 15M19 4Q25 11 19 18"
          fill="none"
          stroke="currentColor"
          strokeWidth="2.2"
        />
      </svg>
    </button>
  );
}

/** Reads a sentence aloud with the browser's own voice, where there is one; null where there is none. */
function useSpeech(): ((sentence: string) => void) | null {
  const isThere = "speechSynthesis" in window;
  useEffect(() => () => (isThere ? window.speechSynthesis.cancel() : undefined), [isThere]);
  const speak = useCallback((sentence: string) => {
    window.speechSynthesis.cancel();
    window.speechSynthesis.speak(new SpeechSynthesisUtterance(sentence));
  }, []);
  return isThere ? speak : null;
}
