import type { BrowserContext } from "@playwright/test";

/**
 * Everything that must never happen, as it happens, in every page of a browser: a request beyond the origin, a
 * violation of the page's policy (those a script catches as well, which no console shows), an error nobody caught.
 * Call it before the first page is opened.
 */
export async function watchedContext(context: BrowserContext, origin: string): Promise<readonly string[]> {
  const wrong: string[] = [];
  context.on("request", (request) => {
    const url = request.url();
    if (!url.startsWith(origin) && !/^(?:data|blob):/.test(url)) wrong.push(`asked for ${url}`);
  });
  context.on("console", (message) => {
    if (/Content Security Policy/i.test(message.text())) wrong.push(message.text());
  });
  context.on("weberror", (error) => wrong.push(String(error.error())));
  await context.exposeFunction("policyBroken", (what: string) => wrong.push(what));
  await context.addInitScript(() => {
    document.addEventListener("securitypolicyviolation", ({ violatedDirective, blockedURI, sample }) => {
      const { policyBroken } = window as unknown as { policyBroken(what: string): void };
      policyBroken(`${violatedDirective} refused ${blockedURI} ${sample}`);
    });
  });
  return wrong;
}
