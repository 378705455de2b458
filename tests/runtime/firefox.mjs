// node firefox.mjs NODE_MODULES FIREFOX ADDRESS: open a calculator, print what it answers.
import { createRequire } from "node:module";
import { pathToFileURL } from "node:url";

const [parts, firefox, address] = process.argv.slice(2);
const require = createRequire(pathToFileURL(parts + "/"));
const { launch } = require("puppeteer-core");

const browser = await launch({ browser: "firefox", executablePath: firefox, headless: true });
try {
  const page = await browser.newPage();
  await page.goto(address);
  await page.waitForSelector('section.sl[data-state="live"]', { timeout: 90_000 });
  const said = await page.evaluate(async () => {
    const reply = await SpringlineEngine.ask({ op: "work", sheet: "pressure" });
    return { way: SpringlineEngine.way, errors: reply.errors };
  });
  console.log(JSON.stringify(said));
} finally {
  await browser.close();
}
