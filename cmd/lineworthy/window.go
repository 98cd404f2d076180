package main

import (
	"fmt"
	"io"
	"path/filepath"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"lineworthy/check/sheet"
	"lineworthy/check/window"
)

// windowFlags are the choices of the window command.
type windowFlags struct {
	format, out, section, asOf, site string
}

var windowFormats = []string{"text", "json", "svg", "png"}

func newWindow(s streams) *cobra.Command {
	var f windowFlags
	cmd := &cobra.Command{
		Use:   "window SHEET",
		Short: "Show which pressures and temperatures a line may see, and its weakest part",
		Long: `Show the region of pressure and temperature in which every part of the line holds: for the line, for each run
and for each section between two devices that can close. The region is exact: it turns where a rating table has a
row and where another part becomes the weakest. Every pressure case of the line stands beside it. Where the
knowledge ends, so does the region.

A picture (svg or png) shows one region: the line, or what --section names.`,
		Example: "  lineworthy window line.yaml\n  lineworthy window line.yaml --section liquid --out liquid.png",
		Args:    cobra.ExactArgs(1),
		RunE:    func(_ *cobra.Command, args []string) error { return runWindow(s, f, args[0]) },
	}
	cmd.Flags().StringVar(&f.format, "format", "", strings.Join(windowFormats, ", ")+" (default: by the name of the file, else text)")
	cmd.Flags().StringVar(&f.out, "out", "", "write to this file; it is replaced only once it is whole")
	cmd.Flags().StringVar(&f.section, "section", "", "only this run or section, by the name the text gives it")
	cmd.Flags().StringVar(&f.asOf, "as-of", "", "day for a sheet that states no date, e.g. 2026-11-25 (default today)")
	cmd.Flags().StringVar(&f.site, "catalog", "", "folder with the site's own catalog rows, laid over the built-in ones")
	_ = cmd.RegisterFlagCompletionFunc("format", cobra.FixedCompletions(windowFormats, cobra.ShellCompDirectiveNoFileComp))
	return cmd
}

func runWindow(s streams, f windowFlags, path string) error {
	if f.format == "" {
		f.format = formatOf(f.out)
	}
	if !slices.Contains(windowFormats, f.format) {
		return usage(fmt.Errorf("--format %s: want one of %s", f.format, strings.Join(windowFormats, ", ")))
	}
	r, err := windowOf(f, path)
	if err != nil {
		return err
	}
	if f.section != "" {
		if err := r.Only(f.section); err != nil {
			return usage(err)
		}
	}
	write := func(w io.Writer) error { return r.Write(w, f.format) }
	if f.out != "" {
		return toFile(f.out, write)
	}
	return write(s.out)
}

func windowOf(f windowFlags, path string) (*window.Result, error) {
	on, err := day(f.asOf)
	if err != nil {
		return nil, usage(err)
	}
	c, err := catalogFlags{format: "text", site: f.site}.open()
	if err != nil {
		return nil, err
	}
	line, err := sheet.Read(path)
	if err != nil {
		return nil, err
	}
	return window.Of(line, c, on)
}

// formatOf takes the format from the end of a file name.
func formatOf(out string) string {
	if end := strings.TrimPrefix(filepath.Ext(out), "."); slices.Contains(windowFormats, end) {
		return end
	}
	return "text"
}
