package window

import (
	"bytes"
	"encoding/xml"
	"fmt"
	"hash/crc32"
	"image"
	"image/draw"
	"image/png"
	"io"
	"strings"

	"gonum.org/v1/plot/vg/vgimg"
	"gonum.org/v1/plot/vg/vgsvg"
)

// dots per inch of a PNG: sharp on A4.
const dpi = 150

// SVG writes the first scope as a picture that carries its own title and description.
func SVG(w io.Writer, r *Result) error {
	f := newFigure(r)
	c := vgsvg.New(pictureWidth, f.height())
	f.paint(c)
	var b bytes.Buffer
	if _, err := c.WriteTo(&b); err != nil {
		return err
	}
	_, err := io.WriteString(w, described(b.String(), f.p.Title.Text, Describe(r)))
	return err
}

// described puts title and description, which screen readers say, behind the opening tag, and other sans-serif faces
// behind the one the letters were measured with.
func described(svg, title, text string) string {
	at := strings.Index(svg, "<svg")
	end := at + strings.Index(svg[at:], ">")
	head := svg[:end] + ` role="img" aria-labelledby="window-title window-desc"`
	body := fmt.Sprintf(">\n<title id=\"window-title\">%s</title>\n<desc id=\"window-desc\">%s</desc>", escaped(title), escaped(text)) + svg[end+1:]
	return head + strings.ReplaceAll(body, "font-family:Liberation Sans;", "font-family:'Liberation Sans',Arial,Helvetica,sans-serif;")
}

func escaped(s string) string {
	var b bytes.Buffer
	_ = xml.EscapeText(&b, []byte(s))
	return b.String()
}

// PNG writes the first scope as a picture with its title and description in text chunks (PNG, ISO/IEC 15948 clause
// 11.3.4, recalled).
func PNG(w io.Writer, r *Result) error {
	f := newFigure(r)
	c := vgimg.NewWith(vgimg.UseWH(pictureWidth, f.height()), vgimg.UseDPI(dpi))
	f.paint(c)
	var b bytes.Buffer
	from := c.Image()
	grey := image.NewGray(from.Bounds()) // a quarter of the bytes, and nothing in the picture is in colour
	draw.Draw(grey, grey.Bounds(), from, image.Point{}, draw.Src)
	if err := png.Encode(&b, grey); err != nil {
		return err
	}
	raw := b.Bytes()
	const head = 8 + 25 // signature and the header chunk, which stands first
	out := append([]byte{}, raw[:head]...)
	out = append(out, textChunk("Title", f.p.Title.Text)...)
	out = append(out, textChunk("Description", Describe(r))...)
	_, err := w.Write(append(out, raw[head:]...))
	return err
}

// textChunk is a tEXt chunk: Latin-1, so that letters beyond it become question marks.
func textChunk(key, text string) []byte {
	data := append([]byte(key), 0)
	for _, r := range text {
		if r > 255 || r < 32 && r != '\n' {
			r = '?'
		}
		data = append(data, byte(r))
	}
	n := len(data)
	out := []byte{byte(n >> 24), byte(n >> 16), byte(n >> 8), byte(n)}
	body := append([]byte("tEXt"), data...)
	sum := crc32.ChecksumIEEE(body)
	return append(append(out, body...), byte(sum>>24), byte(sum>>16), byte(sum>>8), byte(sum))
}

// Describe says in words what the picture of the first scope shows.
func Describe(r *Result) string {
	s := r.Scopes[0]
	var b strings.Builder
	fmt.Fprintf(&b, "Allowed pressure against temperature of %s. ", scopeName(r, s))
	if s.Empty != "" {
		fmt.Fprintf(&b, "No region: %s. ", s.Empty)
	} else {
		fmt.Fprintf(&b, "%s ", range1(s))
	}
	for i, x := range s.Breaks {
		if i == len(s.Breaks)-1 && i > 0 {
			fmt.Fprintf(&b, "At %s: up to %s. ", x.Text, x.Allowed)
			break
		}
		fmt.Fprintf(&b, "At %s: up to %s, weakest %s. ", x.Text, x.Allowed, few(x.Weakest))
	}
	for i, p := range s.Points {
		fmt.Fprintf(&b, "Case %d, %s: %s, %s. ", i+1, p.Case, p.Text, heldWords[p.Held])
	}
	for _, m := range s.Curves {
		fmt.Fprintf(&b, "The vapour pressure of %s reaches the limit at %s. ", m.Fluid, m.Text)
	}
	return strings.TrimSpace(b.String())
}
