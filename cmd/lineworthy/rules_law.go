package main

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"lineworthy/rules"
)

// law is what the law command finds.
type law struct {
	Cited      []rules.Citation  `json:"cited"`      // places that rules rest on
	Considered []rules.Paragraph `json:"considered"` // with what became of them; without TEXT those not wholly judged
}

func newRulesLaw(s streams) *cobra.Command {
	var format string
	return formatted(&cobra.Command{
		Use:   "law [TEXT]",
		Short: "Index the rules by paragraph of law, and say which paragraphs are not judged and why",
		Long: `List the places in laws and standards that rules rest on, and the paragraphs that were considered and are not
judged, or only in part, with the reason. TEXT keeps what has all its words, judged or not.`,
		Example: "  lineworthy rules law\n  lineworthy rules law 1910.111\n  lineworthy rules law chlorine",
		RunE: func(_ *cobra.Command, args []string) error {
			if err := badFormat(format); err != nil {
				return err
			}
			found, err := lawOf(strings.Fields(strings.ToLower(strings.Join(args, " "))))
			if err != nil {
				return err
			}
			if len(found.Cited)+len(found.Considered) == 0 {
				return usage(fmt.Errorf("no paragraph that was considered holds %q: it is not judged", strings.Join(args, " ")))
			}
			if format == "json" {
				return writeJSON(s.out, found)
			}
			writeLaw(s.out, found)
			return nil
		},
	}, &format)
}

func lawOf(words []string) (law, error) {
	out := law{[]rules.Citation{}, []rules.Paragraph{}}
	s, err := rules.Load()
	if err != nil {
		return out, err
	}
	all, err := rules.Coverage()
	if err != nil {
		return out, err
	}
	for _, c := range s.Law() {
		if holds(words, c.Document, c.Clause, strings.Join(c.Rules, " ")) {
			out.Cited = append(out.Cited, c)
		}
	}
	for _, p := range all {
		if (len(words) > 0 || p.Judged() != "judged") && holds(words, p.ID, p.Document, p.Clause, p.Says) {
			out.Considered = append(out.Considered, p)
		}
	}
	return out, nil
}

func holds(words []string, texts ...string) bool {
	text := strings.ToLower(strings.Join(texts, " "))
	return !slices.ContainsFunc(words, func(w string) bool { return !strings.Contains(text, w) })
}

func writeLaw(w io.Writer, l law) {
	for _, c := range l.Cited {
		fmt.Fprintf(w, "%s\n", citation(c.Basis))
		for _, id := range c.Rules {
			fmt.Fprintf(w, "  %s\n", id)
		}
	}
	if len(l.Considered) > 0 {
		fmt.Fprintf(w, "\nParagraphs considered\n")
	}
	for _, p := range l.Considered {
		fmt.Fprintf(w, "%s %s %s\n", p.ID, p.Document, p.Clause)
		indented(w, p.Says+".")
		if len(p.Rules) > 0 {
			indented(w, "judged by: "+strings.Join(p.Rules, ", "))
		}
		if p.OutOfScope != "" {
			indented(w, "not judged: "+p.OutOfScope)
		}
	}
	fmt.Fprintln(w, "\nCheck the current code: most laws were read in the annual edition of 2015.")
}
