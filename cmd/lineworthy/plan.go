package main

import (
	"context"
	"errors"
	"fmt"
	"os"

	"github.com/spf13/cobra"

	"lineworthy/catalog"
	"lineworthy/check/sequence"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// planFlags are the choices of the plan command.
type planFlags struct {
	checkFlags
	check string
}

func newPlan(s streams) *cobra.Command {
	var f planFlags
	cmd := &cobra.Command{
		Use:   "plan SHEET",
		Short: "Derive the operating sequence of a line, or check one that was written",
		Long: `Derive from the sheet what to open and close in which order, set pressures, quantities, expected time and
gas, the flush and the shutdown, and play it step by step. With --check a sequence that a person wrote is played instead.

The play finds liquid blocked in without relief, disconnecting under pressure, with liquid inside or without the flush,
backflow, oxygen opened quickly into a dead end, overfilling, pressure in a closed destination, gas blown through, a vacuum
drawn in a closed vessel, a pump without liquid, a valve open to a hose that is off, a toxic vent, a pad or a regulator left
on, reverse order, and more, and shows which fluid stands in which stretch. It is a simple play: it knows which stretch is
joined to which and what pressure can stand there; times follow from the planned flow alone.

A step is written {do: open, item: V1}. do is one of check, bond, connect, open, close, set, start, stop, transfer, drain,
flush, vent, disconnect; further keys are run, pressure, quantity, fluid, to, slowly and text. A vessel's own valve that the
sheet does not show is the item source. set without a pressure is that of the sheet, and none backs off. flush goes into
the destination, or with to: drain into a drain before it. vent says where it leads: to: closed is an absorber or a closed
vent, to: open the air.

A sequence says nothing about whether the line is fit: see lineworthy check.

Exit codes: 0 no fault, 2 bad input, 3 a fault was found, 4 something is not known.`,
		Example: "  lineworthy plan line.yaml\n  lineworthy plan line.yaml --format yaml > sequence.yaml\n  lineworthy plan line.yaml --check sequence.yaml",
		Args:    cobra.ExactArgs(1),
		RunE:    func(c *cobra.Command, args []string) error { return runPlan(c.Context(), s, f, args[0]) },
	}
	cmd.Flags().StringVar(&f.format, "format", "text", "text for people, yaml for a sequence to edit, json for machines")
	cmd.Flags().StringVar(&f.check, "check", "", "sequence to play instead, in the form that --format yaml writes")
	cmd.Flags().IntVar(&f.width, "width", 0, "width of the text in characters (default: the terminal, else 100)")
	common(cmd, &f.checkFlags)
	return cmd
}

// planned is what the command found out; its JSON is the json format.
type planned struct {
	Line    string            `json:"line"`
	Sheet   string            `json:"sheet"`
	Checked string            `json:"checked,omitempty"` // file with the sequence, when one was given
	Steps   []sequence.Step   `json:"steps"`
	Says    []string          `json:"says"`
	Figures []sequence.Figure `json:"figures"`
	*sequence.Outcome
	title string
}

func runPlan(ctx context.Context, s streams, f planFlags, path string) error {
	if f.format != "text" && f.format != "yaml" && f.format != "json" {
		return usage(fmt.Errorf("--format %s: want text, yaml or json", f.format))
	}
	line, model, err := planModel(ctx, f.checkFlags, path)
	if err != nil {
		return err
	}
	seq, err := wanted(f, line, model)
	if err != nil {
		return usage(err)
	}
	p := &planned{Line: line.ID.V, Sheet: path, Checked: f.check, Steps: seq.Steps, Figures: model.Figures(), title: line.Title.V}
	for _, step := range seq.Steps {
		p.Says = append(p.Says, model.Says(step))
	}
	if p.Outcome, err = model.Play(seq.Steps); err != nil {
		return usage(fmt.Errorf("%s: %w", f.check, err))
	}
	if err := writePlan(s, f, p); err != nil {
		return err
	}
	switch {
	case len(p.Faults) > 0:
		return outcome(exitUnfit)
	case len(p.Open) > 0:
		return outcome(exitUnproven)
	}
	return nil
}

func planModel(ctx context.Context, f checkFlags, path string) (*sheet.Line, *sequence.Model, error) {
	engine, err := newEngine(ctx, f)
	if err != nil {
		return nil, nil, err
	}
	line, err := sheet.Read(path)
	if err != nil {
		return nil, nil, err
	}
	known, err := engine.Facts(line)
	if err != nil {
		return nil, nil, err
	}
	cat, on, err := siteCatalog(f)
	if err != nil {
		return nil, nil, err
	}
	m, err := sequence.New(line, cat, on, known)
	return line, m, err
}

// siteCatalog is the catalog and the day that the engine works with too.
func siteCatalog(f checkFlags) (*catalog.Catalog, units.Date, error) {
	on, err := day(f.asOf)
	if err != nil {
		return nil, on, usage(err)
	}
	cat := catalog.Open()
	if f.site != "" {
		if cat, err = cat.Overlay(f.site); err != nil {
			return nil, on, usage(err)
		}
	}
	return cat, on, nil
}

// wanted is the sequence to play: the one given, or the derived one.
func wanted(f planFlags, line *sheet.Line, m *sequence.Model) (*sequence.Sequence, error) {
	if f.check == "" {
		return m.Derive(), nil
	}
	text, err := os.ReadFile(f.check)
	if err != nil {
		return nil, err
	}
	seq, err := sequence.Read(text)
	if err != nil {
		return nil, fmt.Errorf("%s: %w", f.check, err)
	}
	if seq.Line == "" {
		return nil, errors.New(f.check + ": the sequence does not say which line it is for: write line: " + line.ID.V)
	}
	if seq.Line != line.ID.V {
		return nil, errors.New(f.check + ": the sequence is for line " + seq.Line + ", and the sheet is of line " + line.ID.V)
	}
	return seq, nil
}
