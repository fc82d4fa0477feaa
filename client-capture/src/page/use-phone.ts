import { createContext, useContext } from "react";
import { useStore } from "zustand";
import type { PhoneSession } from "../session/phone-session.ts";
import type { PhoneState, PhoneStore } from "../session/phone-store.ts";

export interface Phone {
  readonly store: PhoneStore;
  readonly session: PhoneSession;
}

export const PhoneContext = createContext<Phone | null>(null);

function usePhone(): Phone {
  const phone = useContext(PhoneContext);
  if (phone === null) throw new Error("usePhone: no PhoneContext above");
  return phone;
}

export const useSession = (): PhoneSession => usePhone().session;

/** One part of the state; the component renders again only where that part changes. */
export function usePhoneState<T>(select: (state: PhoneState) => T): T {
  return useStore(usePhone().store, select);
}
