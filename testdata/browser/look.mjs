// Opens each page without a network, checks it with axe-core and for cut content, prints it and takes pictures.
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { createRequire } from 'node:module'
import { pathToFileURL } from 'node:url'
import { chromium } from 'playwright-core'

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')
const profile = mkdtempSync(join(tmpdir(), 'look-'))
const browser = await chromium.launchPersistentContext(profile, {
  executablePath: '/usr/bin/chromium', headless: true, offline: true, viewport: { width: 1100, height: 900 },
  args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync'],
})

// cut lists what sticks out of the page or of its own box, in the given layout.
const cut = () => {
  const wide = document.documentElement.clientWidth + 1
  const out = []
  for (const e of document.querySelectorAll('body *')) {
    if (e.closest('svg') && e.tagName !== 'svg') continue
    const r = e.getBoundingClientRect()
    if (r.width && r.right > wide) out.push(`${e.tagName} "${e.textContent.trim().slice(0, 40)}" ends at ${r.right} of ${wide}`)
  }
  for (const svg of document.querySelectorAll('svg')) {
    const room = svg.getBoundingClientRect()
    for (const t of svg.querySelectorAll('text, rect, path')) {
      const r = t.getBoundingClientRect()
      if (r.right > room.right + 1 || r.left < room.left - 1 || r.bottom > room.bottom + 1 || r.top < room.top - 1) out.push(`drawing: ${t.tagName} "${t.textContent}" leaves its frame`)
    }
    for (const g of svg.querySelectorAll('g')) {
      const box = g.querySelector(':scope > rect.box')
      for (const t of box ? g.querySelectorAll(':scope > text') : []) {
        if (t.getBoundingClientRect().width > box.getBoundingClientRect().width) out.push(`drawing: "${t.textContent}" is wider than its box`)
      }
    }
  }
  return out
}

let bad = 0
const fault = (file, text) => { bad++; console.log(`${file}: ${text}`) }
for (const file of process.argv.slice(2)) {
  const page = await browser.newPage()
  page.on('request', r => { if (!r.url().startsWith('file:')) fault(file, `asks for ${r.url()}`) })
  page.on('console', m => fault(file, `says ${m.text()}`))
  await page.goto(pathToFileURL(file).href)
  for (const media of ['screen', 'print']) {
    await page.emulateMedia({ media })
    // 184 mm between the margins of A4 are 695 px
    await page.setViewportSize(media === 'print' ? { width: 695, height: 1000 } : { width: 1100, height: 900 })
    for (const text of await page.evaluate(cut)) fault(file, `${media}: ${text}`)
  }
  await page.emulateMedia({ media: 'screen' })
  await page.setViewportSize({ width: 1100, height: 900 })
  await page.screenshot({ path: file.replace(/\.html$/, '-wide.png'), fullPage: true })
  await page.evaluate(axe)
  for (const width of [1100, 400]) {
    await page.setViewportSize({ width, height: 900 })
    const found = await page.evaluate(() => axe.run(document))
    for (const v of found.violations) {
      const where = v.nodes.map(n => n.target.join(' ')).slice(0, 5).join('; ')
      if (['serious', 'critical'].includes(v.impact)) fault(file, `${v.impact}: ${v.help}: ${where}`)
      else console.log(`${file}: ${v.impact}: ${v.help}: ${where}`)
    }
    const open = found.incomplete.map(i => `${i.id} (${i.nodes.length})`).join(', ') || 'none'
    console.log(`${file}, ${width} px: ${found.passes.length} rules passed, ${found.violations.length} violated, left to a person: ${open}`)
  }
  await page.screenshot({ path: file.replace(/\.html$/, '-narrow.png'), fullPage: true })
  await page.emulateMedia({ media: null })
  await page.pdf({ path: file.replace(/\.html$/, '.pdf'), preferCSSPageSize: true })
  await page.close()
}
await browser.close()
rmSync(profile, { recursive: true, force: true })
console.log(bad ? `${bad} faults` : 'no serious fault')
process.exit(bad ? 1 : 0)
