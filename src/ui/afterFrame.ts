/**
 * Does work once the frame that is being made is out, so that what a person does now is shown before it. The answer
 * calls it off. A page that is put aside makes no frames; there the work waits until it is looked at again.
 */
export function afterFrame(work: () => void): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const frame = requestAnimationFrame(() => {
    timer = setTimeout(work);
  });
  return () => {
    cancelAnimationFrame(frame);
    clearTimeout(timer);
  };
}
