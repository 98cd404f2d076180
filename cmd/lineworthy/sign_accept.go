package main

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"strings"

	"gopkg.in/yaml.v3"

	"lineworthy/check/approval"
	"lineworthy/check/report"
)

// accepted gathers what the flags and the list accept. All faults are named at once.
func (n *signing) accepted(ctx context.Context) ([]approval.Accepted, error) {
	all, err := n.fromList()
	if err != nil {
		return nil, err
	}
	if len(n.accept) == 0 {
		return all, nil
	}
	v, err := judgeOn(ctx, n.engine, n.line, n.today)
	if err != nil {
		return nil, err
	}
	var faults []error
	for _, arg := range n.accept {
		a, err := acceptance(arg, approval.Conditions(v))
		all, faults = append(all, a), append(faults, err)
	}
	if err := errors.Join(faults...); err != nil {
		return nil, usage(err)
	}
	return all, nil
}

// acceptance takes "NAME=reason until DATE" apart. A name may itself hold an equals sign, so the known ones go first.
func acceptance(arg string, cs []approval.Condition) (approval.Accepted, error) {
	name, rest, ok := strings.Cut(arg, "=")
	for _, c := range cs {
		if r, is := strings.CutPrefix(arg, c.Name+"="); is && len(c.Name) > len(name) {
			name, rest = c.Name, r
		}
	}
	at := strings.LastIndex(rest, " until ")
	if !ok || at < 0 {
		return approval.Accepted{}, fmt.Errorf(`--accept %q: write "RULE or value=reason until 2027-05-25"`, arg)
	}
	return approval.Accepted{Condition: strings.TrimSpace(name), Reason: strings.TrimSpace(rest[:at]), Until: strings.TrimSpace(rest[at+len(" until "):])}, nil
}

// fromList reads the filled-in list. An entry without reason and day is not accepted yet, and so left out.
func (n *signing) fromList() ([]approval.Accepted, error) {
	if n.conditions == "" {
		return nil, nil
	}
	text, err := os.ReadFile(n.conditions)
	if err != nil {
		return nil, usage(err)
	}
	var list []toAccept
	d := yaml.NewDecoder(bytes.NewReader(text))
	d.KnownFields(true)
	if err := d.Decode(&list); err != nil && !errors.Is(err, io.EOF) {
		return nil, usage(fmt.Errorf("%s: it is no list of conditions as sign writes it: %w", n.conditions, err))
	}
	if err := d.Decode(&yaml.Node{}); !errors.Is(err, io.EOF) {
		return nil, usage(fmt.Errorf("%s: something follows the list, from a line --- on: a file holds one list", n.conditions))
	}
	var all []approval.Accepted
	for _, l := range list {
		if l.Reason+l.Until != "" {
			all = append(all, approval.Accepted{Condition: l.Condition, Says: l.Says, Reason: l.Reason, Until: l.Until})
		}
	}
	return all, nil
}

// known names the conditions, for somebody who wrote one wrong.
func known(v *report.Verdict) string {
	var b strings.Builder
	fmt.Fprintf(&b, "judged for %s the line is %s; its conditions are:", v.AsOf, v.Word)
	for _, c := range approval.Conditions(v) {
		b.WriteString("\n  " + c.Name)
	}
	return b.String()
}
