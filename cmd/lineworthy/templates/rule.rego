# METADATA
# title: A rating is near to the highest pressure
# description: |
#   Say in one or two sentences what is wrong and why it matters. This example wants a tenth in reserve.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: capacities
#   scope: [is_hose]
#   needs: [capacities.rated_kpa, capacities.demand_kpa]
#   message: "{what} of {part} is good for {have_kpa} and can see {need_kpa}"
#   action: "Fit a part with a higher rating."
#   basis:
#     - document: name the document that asks for this
#       edition: "and its edition"
#       clause: ""
#       standing: <<if .Site>>site<<else>>practice<<end>>
package <<.Package>>

# severity: stop makes the line unfit, condition asks for something, note only says it.
# scope: what must be true of a subject before it is judged; read each of these below. needs: facts that may be missing
# and without which nothing can be said; where one is missing, the line is not shown to be safe.
report contains {
	"subject": c.id,
	"part": c.part,
	"what": c.what,
	"have_kpa": c.rated_kpa,
	"need_kpa": c.demand_kpa,
} if {
	some c in input.capacities
	c.is_hose
	10 * c.rated_kpa < 11 * c.demand_kpa
}
