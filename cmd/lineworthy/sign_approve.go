package main

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"slices"
	"strings"

	"gopkg.in/yaml.v3"

	"lineworthy/check/approval"
	"lineworthy/check/report"
	"lineworthy/check/units"
)

// envelope is a new one, or the one that is there when it states the same.
func (n *signing) envelope(ctx context.Context) (*approval.Envelope, error) {
	old, err := n.existing()
	if err != nil {
		return nil, err
	}
	if old != nil && n.who+n.role+n.decision+n.note+n.until+n.conditions+strings.Join(n.accept, "") == "" {
		return old, n.countersign(ctx, old)
	}
	if n.who+n.role+n.decision == "" { // only a further signature goes without
		return nil, usage(fmt.Errorf("%s is not there yet: say with --who, --role and --decision who decides what", n.file))
	}
	accepted, err := n.accepted(ctx)
	if err != nil {
		return nil, err
	}
	made, err := n.statement(ctx, approval.Approval{Who: n.who, Role: n.role, Decision: approval.Decision(n.decision), Note: n.note, Until: n.until}, accepted, n.today)
	if err != nil {
		return nil, err
	}
	e, err := approval.Wrap(made)
	if err != nil || old == nil {
		return e, err
	}
	return old, n.same(old, e)
}

func (n *signing) existing() (*approval.Envelope, error) {
	text, err := os.ReadFile(n.file)
	if errors.Is(err, fs.ErrNotExist) {
		return nil, nil
	}
	if err != nil {
		return nil, usage(err)
	}
	e, err := approval.Read(text)
	if err != nil {
		return nil, usage(fmt.Errorf("%s is there already and is left as it is: %w", n.file, err))
	}
	return e, nil
}

func (n *signing) same(old, made *approval.Envelope) error {
	if old.PayloadType == made.PayloadType && bytes.Equal(old.Payload, made.Payload) {
		return nil
	}
	return usage(fmt.Errorf("%s states something else than what is to be signed now (another sheet, day, person, condition or rule): it is left as it is; name another file", n.file))
}

// countersign takes the statement as it stands, if the sheet still gives it for its day and today nothing stands against it.
func (n *signing) countersign(ctx context.Context, old *approval.Envelope) error {
	s, err := old.Statement()
	if err != nil {
		return usage(fmt.Errorf("%s: %w", n.file, err))
	}
	then, err := units.ParseDate(s.Predicate.AsOf)
	if err != nil {
		return usage(err)
	}
	a := s.Predicate
	accepted := slices.Clone(a.Conditions)
	for i := range accepted {
		accepted[i].Says = "" // that they say the same is seen from the whole statement
	}
	made, err := n.statement(ctx, a, accepted, then)
	if err != nil {
		return err
	}
	e, err := approval.Wrap(made)
	if err == nil {
		err = n.same(old, e)
	}
	if err != nil || then.Days == n.today.Days {
		return err
	}
	v, err := judgeOn(ctx, n.engine, n.line, n.today)
	if err != nil {
		return err
	}
	if ended := a.Ended(n.today.String()); ended != nil {
		return usage(fmt.Errorf("not signed: %s", strings.Join(ended, "\n")))
	}
	return n.mayApprove(v, a)
}

// mayApprove refuses to put a name under a line that must not be used, and writes the list of what is still open.
func (n *signing) mayApprove(v *report.Verdict, a approval.Approval) error {
	if a.Decision != approval.Approved {
		return nil
	}
	switch v.Word {
	case report.Fit:
		return nil
	case report.Unfit, report.Unproven:
		fmt.Fprintf(n.err, "not signed: judged for %s the line is %s and cannot be approved. %s\nSee: lineworthy check %s\n", v.AsOf, v.Word, v.Reason, v.Sheet)
		if v.Word == report.Unfit {
			return outcome(exitUnfit)
		}
		return outcome(exitUnproven)
	}
	all := approval.Conditions(v)
	open := approval.Open(all, a.Conditions, v.AsOf)
	if len(open) == 0 {
		return nil
	}
	fmt.Fprintf(n.err, "not signed: judged for %s the line is conditional; of its %d conditions these are not accepted with a reason and a last day that is still to come:\n", v.AsOf, len(all))
	for _, c := range open {
		fmt.Fprintf(n.err, "  %s\n", c.Name)
	}
	fmt.Fprintln(n.err, "The list to fill in is on the output; give it back with --conditions.")
	if err := writeList(n.streams, all, a.Conditions); err != nil {
		return err
	}
	return outcome(exitUnproven)
}

// toAccept is one entry of the list of conditions.
type toAccept struct {
	Condition string `yaml:"condition"`
	Says      string `yaml:"says"`
	Reason    string `yaml:"reason"`
	Until     string `yaml:"until"`
}

func writeList(s streams, all []approval.Condition, accepted []approval.Accepted) error {
	fmt.Fprintln(s.out, "# Write for each condition why it is met or borne, and the last day for which that holds, like 2027-05-25.")
	var list []toAccept
	for _, c := range all {
		l := toAccept{Condition: c.Name, Says: c.Says}
		for _, a := range accepted {
			if a.Condition == c.Name {
				l.Reason, l.Until = a.Reason, a.Until
			}
		}
		list = append(list, l)
	}
	text, err := yaml.Marshal(list)
	if err == nil {
		_, err = s.out.Write(text)
	}
	return err
}
