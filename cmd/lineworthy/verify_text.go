package main

import (
	"fmt"
	"io"
	"strings"
)

// write gives the answer and its exit code.
func (a *answer) write(s streams, format string) error {
	if format == "json" {
		if err := writeJSON(s.out, a); err != nil {
			return err
		}
	} else {
		a.text(s.out)
	}
	switch a.Status {
	case statusValid:
		return nil
	case statusTampered, statusUnsigned:
		return outcome(exitUnfit)
	}
	return outcome(exitUnproven)
}

func (a *answer) text(w io.Writer) {
	word := strings.ToUpper(a.Status)
	if a.Status == statusValid && !a.Compared {
		word = "VALID AS SIGNED, NOT COMPARED WITH A SHEET"
	}
	fmt.Fprintf(w, "%s  %s, on %s\n", word, a.File, a.AsOf)
	for _, r := range a.Reasons {
		fmt.Fprintf(w, "  - %s\n", r)
	}
	if a.Status != statusValid {
		fmt.Fprintln(w, "Do not rely on this approval.")
	}
	if a.Approval != nil {
		a.content(w)
	}
	a.signatures(w)
	a.rests(w)
	fmt.Fprintln(w, "\nA signature shows who stood for which bytes; it does not make a line safe. Local codes and licensed practice apply.")
}

func (a *answer) content(w io.Writer) {
	p := a.Approval
	fmt.Fprintf(w, "\nLine %s, sheet %s: %s by %s, %s, for %s", p.Line, a.Subject.Name, p.Decision, p.Who, p.Role, p.AsOf)
	if p.Until != "" {
		fmt.Fprintf(w, ", until %s", p.Until)
	} else if p.Decision == "approved" {
		fmt.Fprint(w, ", without an end")
	}
	fmt.Fprintf(w, ".\nThe verdict was %s", p.Verdict)
	if len(p.Conditions) > 0 {
		fmt.Fprintf(w, "; %d conditions accepted, the first ends on %s", len(p.Conditions), a.firstEnd())
	}
	fmt.Fprintln(w, ".")
	if p.Note != "" {
		fmt.Fprintf(w, "Note: %s\n", p.Note)
	}
}

func (a *answer) firstEnd() string {
	first := a.Approval.Conditions[0].Until
	for _, c := range a.Approval.Conditions {
		first = min(first, c.Until)
	}
	return first
}

func (a *answer) signatures(w io.Writer) {
	if len(a.Signers) == 0 {
		return
	}
	fmt.Fprintf(w, "\n%d of the %d keys given signed it", a.signed(), len(a.Signers))
	if others := a.Signatures - a.signed(); a.Approval != nil && others > 0 {
		fmt.Fprintf(w, "; signatures of other keys, not looked at: %d", others)
	}
	fmt.Fprintln(w, ":")
	for _, s := range a.Signers {
		word := "signed"
		if !s.Signed {
			word = "did not sign"
		}
		fmt.Fprintf(w, "  %s  %s (%s)\n", word, s.Key, s.KeyID[:16])
	}
}

// rests says what was compared with what was signed, and what the line is now.
func (a *answer) rests(w io.Writer) {
	switch {
	case a.Approval == nil:
		return
	case !a.Compared:
		fmt.Fprintln(w, "\nNo sheet was given: whether the line is still the one signed is not known. Give it after the file of the approval.")
		return
	case len(a.Differences) == 0:
		fmt.Fprintln(w, "\nSheet, facts, rules and catalog rows are as signed.")
	default:
		fmt.Fprintln(w, "\nNot as signed:")
		for _, d := range a.Differences {
			fmt.Fprintf(w, "  %s: signed %s, now %s\n", d.What, digits(d.Signed), digits(d.Now))
		}
	}
	if a.Today == nil {
		return
	}
	as := "as it was signed"
	if a.Today.Changed {
		as = "which it was not when signed"
	}
	fmt.Fprintf(w, "Judged for %s the line is %s, %s.\n", a.AsOf, a.Today.Verdict, as)
	if v := version(); v != a.Approval.Tool.Version {
		fmt.Fprintf(w, "Signed with version %s, proven with %s.\n", a.Approval.Tool.Version, v)
	}
}

func digits(digest string) string {
	if digest == "" {
		return "none"
	}
	return digest[:min(len(digest), 16)]
}
