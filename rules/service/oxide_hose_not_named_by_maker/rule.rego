# METADATA
# title: A hose carries an alkylene oxide that its maker does not name
# description: |
#   Ethylene and propylene oxide swell and polymerise in rubber and on rust. US ship rules want a hose
#   approved and marked for the oxide alone. On land this is good practice.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: services
#   scope: ["fluid_id=ethylene-oxide|propylene-oxide"]
#   needs: [services.maker_names_it]
#   message: "{part} carries {fluid}, and its maker does not name that oxide for it"
#   action: "Fit a hose that its maker approved and marked for this oxide only."
#   basis:
#     - document: 46 CFR 154.1725
#       edition: "2026 text"
#       clause: "whole section"
#       standing: published
#     - document: 46 CFR 153.530
#       edition: "CFR 2015 annual edition"
#       clause: "whole section"
#       standing: published
package rules.service.oxide_hose_not_named_by_maker

report contains {"subject": s.id, "part": s.hose, "fluid": s.fluid} if {
	some s in input.services
	s.fluid_id in {"ethylene-oxide", "propylene-oxide"}
	s.maker_names_it == false
}
