# METADATA
# title: A hose end has a tail of the size beside that of the hose
# description: |
#   Hose of 50 and 51 mm, 19 and 20, 38 and 40, 76 and 80 are different sizes whose bores touch or
#   overlap. The tail of one goes into the other, loose or over-tight, and lets go later. Sizes
#   within 6 per cent of each other are taken for such neighbours.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: tails
#   scope: []
#   needs: [tails.tail_um, tails.hose_um]
#   message: "The ends of {part} have tails for hose of {have_um}; the hose is {need_um}"
#   action: "Have the hose made up again with tails of its own size, and tested."
#   basis:
#     - document: ISO 1307
#       edition: "not stated in the table read"
#       clause: "sizes"
#       standing: restated
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.connection.hose_tail_nearly_fits

report contains {
	"subject": t.id,
	"part": t.id,
	"have_um": t.tail_um,
	"need_um": t.hose_um,
} if {
	some t in input.tails
	t.tail_um != t.hose_um
	100 * abs(t.tail_um - t.hose_um) <= _neighbour_percent * max([t.tail_um, t.hose_um])
}

_neighbour_percent := 6
