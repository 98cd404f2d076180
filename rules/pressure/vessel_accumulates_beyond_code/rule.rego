# METADATA
# title: A vessel can rise further above its rating than its code grants
# description: |
#   While its relief device blows, the code of a vessel lets the pressure rise by a tenth. That grant is the
#   vessel's alone: a hose or a coupling on it has none.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: capacities
#   scope: [accumulates]
#   needs: [capacities.rated_kpa, capacities.demand_kpa]
#   message: "{part} is rated {have_kpa}; {case} can reach {need_kpa}, more than a tenth above it"
#   action: Fit a relief device with more capacity or a lower set pressure, or limit the flow into the vessel.
#   basis:
#     - document: ASME BPVC Section VIII-1
#       edition: "1992"
#       clause: UG-125(c)
#       standing: published
#     - document: Directive 2014/68/EU
#       edition: ""
#       clause: Annex I 7.3
#       standing: recalled
package rules.pressure.vessel_accumulates_beyond_code

report contains {
	"subject": c.id,
	"part": c.part,
	"case": c.case,
	"have_kpa": c.rated_kpa,
	"need_kpa": c.demand_kpa,
} if {
	some c in input.capacities
	c.accumulates
	c.rated_kpa * 110 < c.demand_kpa * 100
}
