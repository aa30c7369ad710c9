/** One control of the class view, with the key that does the same. */
interface ControlProps {
  readonly name: string;
  /** The key that does the same. */
  readonly mark: string;
  readonly onPress: () => void;
  readonly main?: boolean;
  /** Of use only where there are keys. */
  readonly keysOnly?: boolean;
  readonly disabled?: boolean;
  readonly pressed?: boolean;
  readonly expanded?: boolean;
}

export function ClassControl(props: ControlProps) {
  const { name, mark, onPress, main = false, keysOnly = false, disabled = false, pressed, expanded } = props;
  const kind = main ? " class-control-main" : keysOnly ? " class-control-keys" : "";
  return (
    <button
      type="button"
      className={`patch class-control${kind}`}
      aria-disabled={disabled}
      aria-pressed={pressed}
      aria-expanded={expanded}
      // A pointer leaves the focus where it is, so that the space bar goes on meaning one piece on.
      onMouseDown={(event) => event.preventDefault()}
      onClick={onPress}
    >
      {name}
      <kbd className="class-key" aria-hidden>
        {mark}
      </kbd>
    </button>
  );
}
