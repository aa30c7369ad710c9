import { useState } from "react";
import { createRoot } from "react-dom/client";

/** A page of one controlled field and a button with its words: what no tool can be quicker than. */
function BareField() {
  const [text, setText] = useState("");
  return (
    <>
      <input value={text} onChange={({ target }) => setText(target.value)} />
      <button type="button" className="stop-slab">
        {text.length}
      </button>
    </>
  );
}

const root = document.getElementById("root");
if (root !== null) createRoot(root).render(<BareField />);
