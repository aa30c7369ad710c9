import { useEffect, useState } from "react";
import { isRemoteOffered } from "../../app/classRemote/remoteLink";

/** Whether the server that this page came from passes moves on; null until it has answered. */
export function useRemoteOffered(): boolean | null {
  const [isOffered, setOffered] = useState<boolean | null>(null);
  useEffect(() => {
    let isHere = true;
    void isRemoteOffered().then((is) => {
      if (isHere) setOffered(is);
    });
    return () => {
      isHere = false;
    };
  }, []);
  return isOffered;
}
