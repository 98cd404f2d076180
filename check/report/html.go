package report

import (
	"bytes"
	"embed"
	"html/template"
	"io"
	"strings"
)

//go:embed html
var pages embed.FS

var htmlPage = template.Must(template.ParseFS(pages, "html/*.html"))

// HTML writes the report as one page that loads nothing and runs nothing, for a screen, a screen reader and A4 paper. Whole
// digests are always there; Full also names every single thing that was judged.
func HTML(w io.Writer, v *Verdict, o Options) error {
	v, err := ready(v)
	if err != nil {
		return err
	}
	var b bytes.Buffer
	if err := htmlPage.ExecuteTemplate(&b, "page.html", newSheetPage(v, o.Full)); err != nil {
		return err
	}
	_, err = w.Write(b.Bytes())
	return err
}

// sheetPage is what the page template fills in. Its fields are words and numbers of the verdict; markup stands in the template.
type sheetPage struct {
	Style                                   template.CSS
	Word, Class, Line, Title                string
	Meaning, Reason, SheetLine              string
	Beside, Standings, JudgedLine, Made     string
	Governing                               *bars
	Cautions                                []string
	Runs                                    []drawing
	Legend                                  []legendMark
	Findings                                []entry
	Confirm, Open, Cases, Judged, NotJudged *table
	Digests                                 *table
	Region                                  *regionPlot
}

func newSheetPage(v *Verdict, full bool) *sheetPage {
	m := marksOf(v)
	p := &sheetPage{
		Style: style(), Word: capitals(v.Word), Class: string(v.Word), Line: v.Line, Title: v.Title,
		Meaning: meaning[v.Word], Reason: v.Reason, SheetLine: sheetLine(v),
		Standings: legend(v), JudgedLine: judgedLine(v),
		Made:      "Made by " + v.Tool.Name + " " + v.Tool.Version + " with " + v.Tool.Engine + ".",
		Governing: newBars(v.Governing), Cautions: cautions(v),
		Runs: drawings(v, m), Legend: legendMarks(), Findings: entries(v),
		Confirm: confirmTable(v), Open: openTable(v), Cases: caseTable(v),
		Judged: judgedTable(v, full), NotJudged: notJudgedTable(v, full), Digests: digestTable(v),
		Region: newRegionPlot(v),
	}
	p.Beside = strings.Join(m.beside(v), ", ")
	return p
}

// style is the style sheet, which is part of this program: no text of a verdict ever goes into it.
func style() template.CSS {
	text, err := pages.ReadFile("html/style.css")
	if err != nil {
		panic(err) // it is embedded above
	}
	return template.CSS(strings.TrimSpace(string(text)))
}
